/**
 * Energy that a band holds: stretched, coiled, running; and how fast a broken end flies.
 * Units: SI only (J, N, N/m, Pa, m, m², kg/m, m/s).
 * Source: strain energy: Hibbeler, Mechanics of Materials, 14.1-14.2, from memory; recoil derived
 * here.
 */
import { assertAtLeast, assertPositive } from '../assert.ts';

/**
 * Energy of the stretched loop, σ²/(2E)·A·L in J: 1 to 20 J.
 * @throws RangeError unless all are above 0
 */
export function stretchEnergy({
  stress,
  youngsModulus,
  area,
  loopLength,
}: {
  readonly stress: number; // Pa, ≥ 0
  readonly youngsModulus: number; // Pa
  readonly area: number; // m²
  readonly loopLength: number; // m
}): number {
  assertAtLeast('stress', stress, 0, 'Pa');
  assertPositive('youngsModulus', youngsModulus, 'Pa');
  assertPositive('area', area, 'm²');
  assertPositive('loopLength', loopLength, 'm');
  return (stress ** 2 / (2 * youngsModulus)) * area * loopLength;
}

/**
 * Energy in frame and spring, F²/(2k) in J: a few joules in a frame, hundreds in a long soft
 * spring.
 * @throws RangeError unless wheelForce ≥ 0 N and stiffness > 0 N/m
 */
export function supportEnergy(wheelForce: number, stiffness: number): number {
  assertAtLeast('wheelForce', wheelForce, 0, 'N');
  assertPositive('stiffness', stiffness, 'N/m');
  return wheelForce ** 2 / (2 * stiffness);
}

/**
 * Radius of a band coiled in `turns` rings, L/(2π·turns) in m.
 * @throws RangeError unless above 0
 */
export function coilRadius(loopLength: number, turns = 3): number {
  assertPositive('loopLength', loopLength, 'm');
  assertPositive('turns', turns);
  return loopLength / (2 * Math.PI * turns);
}

/**
 * Energy of a band bent to a coil, E·t²/(24R²)·A·L in J, A with the width over the teeth: 20 to 76
 * J, released in the hands.
 * @throws RangeError unless all are above 0
 */
export function coilEnergy({
  youngsModulus,
  thickness,
  radius,
  area,
  loopLength,
}: {
  readonly youngsModulus: number; // Pa
  readonly thickness: number; // m
  readonly radius: number; // m
  readonly area: number; // m²
  readonly loopLength: number; // m
}): number {
  assertPositive('youngsModulus', youngsModulus, 'Pa');
  assertPositive('thickness', thickness, 'm');
  assertPositive('radius', radius, 'm');
  assertPositive('area', area, 'm²');
  assertPositive('loopLength', loopLength, 'm');
  return ((youngsModulus * thickness ** 2) / (24 * radius ** 2)) * area * loopLength;
}

/**
 * Energy of the running band, m·L·v²/2 in J, wheels apart.
 * @throws RangeError unless m, L > 0, v ≥ 0
 */
export function kineticEnergy({
  massPerLength,
  loopLength,
  speed,
}: {
  readonly massPerLength: number; // kg/m
  readonly loopLength: number; // m
  readonly speed: number; // m/s
}): number {
  assertPositive('massPerLength', massPerLength, 'kg/m');
  assertPositive('loopLength', loopLength, 'm');
  assertAtLeast('speed', speed, 0, 'm/s');
  return (massPerLength * loopLength * speed ** 2) / 2;
}

/**
 * Speed that the stretch gives a broken end, σ/√(E·ρ) in m/s: 2 to 3, on top of the band's own.
 * @throws RangeError unless stress ≥ 0 Pa, youngsModulus and density above 0
 */
export function recoilSpeed({
  stress,
  youngsModulus,
  density,
}: {
  readonly stress: number; // Pa
  readonly youngsModulus: number; // Pa
  readonly density: number; // kg/m³
}): number {
  assertAtLeast('stress', stress, 0, 'Pa');
  assertPositive('youngsModulus', youngsModulus, 'Pa');
  assertPositive('density', density, 'kg/m³');
  return stress / Math.sqrt(youngsModulus * density);
}
