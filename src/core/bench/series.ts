/**
 * Readings on the practice bench, as a person would take them: the torque is set by a wrench, the
 * dial and the handle are read to a step, the bar warms in the hands, a clamp may slip.
 * Units: SI only (N·m, m, Pa; turns have no unit).
 * Source: the relations of the other files of this folder; coil set is made to die exponentially.
 */
import { assertPositive, assertWhole } from '../assert.ts';
import { thermalExpansion } from '../assumptions.ts';
import { elongation } from '../elasticity.ts';
import { bandStiffness } from '../loop/band-stiffness.ts';
import { loopLength } from '../loop/geometry.ts';
import { type RandomSource, randomSource } from '../random.ts';
import { efficiency, thrustFromTorque } from '../screw/torque.ts';
import { sectionArea, strandForceAtWheel, strandStress } from '../section.ts';
import { seriesStiffness, turnsForForce } from '../turns.ts';
import type { BenchMill, KnownMill } from './mill.ts';

const READINGS_TO_WARM = 5; // after which the bar has taken 63 % of its warming
const SLIP = { least: 20e-6, most: 80e-6 }; // m, how far a clamp slips
const ATTEMPTS = 1_000_000; // at one mill, each with other chances

/** What is written down at one step of a series. */
export interface BenchReading {
  readonly torque: number; // N·m, as the wrench was set
  readonly turns: number; // of the handle, as read, from where the band hung slack
  readonly dial: number; // m, shown, 0 to one turn of the hand
  readonly wholeTurns: number; // of the hand, since the first reading
}

/** A series on the bench, with the truth that it should have shown. */
export interface BenchSeries {
  readonly readings: readonly BenchReading[];
  readonly released: number; // m, by how much the dial misses its first reading after letting off
  readonly zero: number; // m, true, on the scale of the elongation since the first reading
  readonly slipped: boolean; // a clamp did
}

/** True stress at a torque that was reached while tightening, in Pa; 0 up to the drag torque. */
export function benchStress({ known, hidden }: BenchMill, torque: number): number {
  const thrust = thrustFromTorque(hidden.screw, Math.max(0, torque - hidden.dragTorque));
  const area = sectionArea({ width: known.bodyWidth, thickness: known.thickness });
  return strandStress(strandForceAtWheel(thrust), area);
}

function trueTurns({ known, hidden }: BenchMill, stress: number): number {
  const { bodyWidth, thickness, wheelDiameter, centreDistance } = known;
  const area = sectionArea({ width: bodyWidth, thickness });
  const [wheelDiameter1, wheelDiameter2] = [wheelDiameter, wheelDiameter];
  const loop = loopLength({ wheelDiameter1, wheelDiameter2, centreDistance, thickness });
  const band = bandStiffness({ youngsModulus: hidden.youngsModulus, area }, loop);
  return turnsForForce({
    lead: hidden.screw.lead,
    wheelForce: 2 * stress * area,
    stiffness: seriesStiffness([band, hidden.frameStiffness]),
    slackTurns: hidden.slackTurns,
  });
}

/** What coil set still adds to the reading at a stress, in m; either sign. */
export const coilSetLeft = ({ hidden }: BenchMill, stress: number): number =>
  hidden.coilShift * Math.exp(-stress / hidden.coilStress);

/** What the clamps are apart, beyond the gauge length: stretch, and coil set that is not yet gone. */
function trueExtension(mill: BenchMill, stress: number): number {
  const { known, hidden } = mill;
  const stretch = elongation({
    stress,
    youngsModulus: hidden.youngsModulus,
    gaugeLength: known.gaugeLength,
  });
  return stretch + coilSetLeft(mill, stress);
}

/** Whether more is lost to straightening than the stretch adds, from one torque up to another. */
export function straightensBack(mill: BenchMill, from: number, to: number): boolean {
  const [before, after] = [from, Math.max(from, to)].map((torque) =>
    trueExtension(mill, benchStress(mill, torque)),
  ) as [number, number];
  return after < before - mill.known.dialStep;
}

/** How far the clamps have slipped by a reading, in m; the first comes just after they were set. */
function slipper({ hidden }: BenchMill, { uniform }: RandomSource): (place: number) => number {
  const total: number[] = [0];
  return (place) => {
    for (let next = total.length; next <= place; next += 1) {
      const [chance, size] = [uniform(), uniform()];
      const slip = chance < hidden.slipChance ? SLIP.least + (SLIP.most - SLIP.least) * size : 0;
      total.push((total[next - 1] as number) + slip);
    }
    return total[place] as number;
  };
}

/** What the dial shows after a growth in its steps; the hand runs backwards as the reading grows. */
function dialFace({ dialStep, dialTurn }: KnownMill, startShare: number) {
  const steps = Math.round(dialTurn / dialStep);
  const start = Math.floor(steps * startShare);
  return (growth: number): Pick<BenchReading, 'dial' | 'wholeTurns'> => {
    const wholeTurns = -Math.floor((start - growth) / steps) + 0; // no minus zero
    return { dial: (start - growth + wholeTurns * steps) * dialStep, wholeTurns };
  };
}

/**
 * The readings at torques set one after the other, on a slack band with the clamps set anew. The
 * same attempt gives the same chances, so a longer series begins with the shorter one. A torque
 * below one already reached changes nothing: the screw holds.
 * @throws RangeError unless torques are above 0 and attempt is whole, 0 to 999 999
 */
export function benchSeries(mill: BenchMill, torques: readonly number[], attempt = 0): BenchSeries {
  assertWhole('attempt', attempt, 0, ATTEMPTS - 1);
  const { known, hidden } = mill;
  const source = randomSource((mill.seed + 1) * ATTEMPTS + attempt);
  const face = dialFace(known, source.uniform());
  const slipAt = slipper(mill, source);
  const warming = thermalExpansion.steel * known.gaugeLength * hidden.barWarming;
  /** Steps of the dial that the clamps are apart, beyond the gauge length. */
  const look = (stress: number, place: number): number => {
    const warmed = warming * (1 - Math.exp(-place / READINGS_TO_WARM));
    const noise = hidden.repeatability * source.normal();
    const seen = trueExtension(mill, stress) - slipAt(place) - warmed + noise;
    return Math.round(seen / known.dialStep);
  };
  let held = 0;
  const steps = torques.map((torque, place) => {
    assertPositive(`torques[${place}]`, torque, 'N·m');
    held = Math.max(held, torque * (1 + hidden.torqueScatter * source.normal()));
    const stress = benchStress(mill, held);
    const turns = known.turnStep * Math.round(trueTurns(mill, stress) / known.turnStep);
    return { torque, turns, stress, extension: look(stress, place) };
  });
  const first = steps[0];
  if (first === undefined) throw new RangeError('torques must be at least one (was none)');
  const back = look(first.stress, steps.length);
  return {
    readings: steps.map(({ torque, turns, extension }) => ({
      torque,
      turns,
      ...face(extension - first.extension),
    })),
    released: (back - first.extension) * known.dialStep,
    zero: -first.extension * known.dialStep,
    slipped: slipAt(steps.length) > 0,
  };
}

/** Efficiency of the hidden screw in tightening, no-load torque left out; no unit, 0 to 1. */
export const benchEfficiency = ({ hidden }: BenchMill): number => efficiency(hidden.screw);
