/**
 * A hydraulic tensioner: pressure on a piston, less or more the friction of its seal; and oil shut in
 * behind a valve, which is a stiff spring that warms too.
 * Units: SI only (m, m², Pa, N, N/m, K, 1/K).
 * Source: definition of pressure and of the bulk modulus; the seal's friction is the caller's figure.
 */
import { assertAtLeast, assertBetween, assertPositive } from '../assert.ts';

/** The cylinder; `sealFriction` opposes whichever way the piston last moved. */
export interface Cylinder {
  readonly bore: number; // m, > 0
  readonly sealFriction: number; // N, 0 or more
}

/** Which way the piston last moved. */
export type Stroke = 'pumping' | 'lettingDown';

/** Piston area π·Dp²/4 in m². @throws RangeError unless bore > 0 m */
export function pistonArea({ bore }: Pick<Cylinder, 'bore'>): number {
  assertPositive('bore', bore, 'm');
  return (Math.PI * bore * bore) / 4;
}

function strokeFriction({ sealFriction }: Cylinder, stroke: Stroke): number {
  assertAtLeast('sealFriction', sealFriction, 0, 'N');
  return stroke === 'pumping' ? sealFriction : -sealFriction;
}

/**
 * Thrust p·A_p − F_seal while pumping, p·A_p + F_seal while letting down, in N; 0 while the
 * pressure has not yet overcome the seal. @throws RangeError unless pressure ≥ 0 Pa
 */
export function hydraulicThrust(cylinder: Cylinder, pressure: number, stroke: Stroke): number {
  assertAtLeast('pressure', pressure, 0, 'Pa');
  return Math.max(0, pressure * pistonArea(cylinder) - strokeFriction(cylinder, stroke));
}

/**
 * Pressure for a thrust, (Q ± F_seal)/A_p in Pa, never below 0.
 * @throws RangeError unless thrust ≥ 0 N
 */
export function pressureForThrust(cylinder: Cylinder, thrust: number, stroke: Stroke): number {
  assertAtLeast('thrust', thrust, 0, 'N');
  return Math.max(0, (thrust + strokeFriction(cylinder, stroke)) / pistonArea(cylinder));
}

/** Oil behind a closed valve: how long its column is, how stiff it is, how it grows with warmth. */
export interface ShutInOil {
  readonly column: number; // m, its volume over the piston's area
  readonly bulkModulus: number; // Pa
  readonly expansion: number; // 1/K, by volume
}

/** Stiffness of shut-in oil, K·A_p/h in N/m. @throws RangeError unless all are above 0 */
export function oilStiffness(cylinder: Pick<Cylinder, 'bore'>, oil: ShutInOil): number {
  assertPositive('bulkModulus', oil.bulkModulus, 'Pa');
  assertPositive('column', oil.column, 'm');
  return (oil.bulkModulus * pistonArea(cylinder)) / oil.column;
}

/**
 * How far warmed oil pushes the piston if nothing holds it, γ·h·ΔT in m, below 0 where it cools; the
 * cylinder's own growth, a twentieth of that, is left out.
 * @throws RangeError unless column > 0, expansion ≥ 0 and the change within ±60 K
 */
export function oilGrowth({ column, expansion }: ShutInOil, temperatureChange: number): number {
  assertPositive('column', column, 'm');
  assertAtLeast('expansion', expansion, 0, '1/K');
  assertBetween('temperatureChange', temperatureChange, -60, 60, 'K');
  return expansion * column * temperatureChange;
}
