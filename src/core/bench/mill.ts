/**
 * A mill for the practice bench, drawn from a seed: what its owner can measure, and what stays
 * hidden until the end.
 * Units: SI only (m, N·m, Pa, N/m, K).
 * Source: definition; the ranges are common practice for small mills, no source.
 */
import { assertWhole } from '../assert.ts';
import { type RandomSource, randomSource } from '../random.ts';
import type { Screw } from '../screw/torque.ts';
import { thread } from '../threads.ts';

/** What the owner can know before the first reading. */
export interface KnownMill {
  readonly screwThread: string;
  readonly collarDiameter: number; // m, mean
  readonly collarIsBearing: boolean; // a ball thrust bearing, else a plain greased washer
  readonly bodyWidth: number; // m, below the gullets
  readonly thickness: number; // m
  readonly wheelDiameter: number; // m, both wheels
  readonly centreDistance: number; // m
  readonly gaugeLength: number; // m
  readonly dialStep: number; // m, to which the dial is read
  readonly dialTurn: number; // m, one turn of the hand, which runs backwards
  readonly turnStep: number; // turns, to which the handle is read
}

/** What only the bench knows. */
export interface HiddenMill {
  readonly youngsModulus: number; // Pa
  readonly screw: Screw;
  readonly dragTorque: number; // N·m
  readonly frameStiffness: number; // N/m at the wheel
  readonly slackTurns: number; // before the band carries anything
  readonly coilShift: number; // m, what coil set adds to the reading of the slack band; either sign
  readonly coilStress: number; // Pa, over which the coil set dies by a factor e
  readonly repeatability: number; // m, standard deviation of a reading
  readonly torqueScatter: number; // relative standard deviation of a torque set
  readonly barWarming: number; // K, by which the hands warm the bar in the end
  readonly slipChance: number; // that a clamp slips before a reading
}

/** A mill on the bench. */
export interface BenchMill {
  readonly seed: number;
  readonly known: KnownMill;
  readonly hidden: HiddenMill;
}

const THREADS = ['Tr20x4', 'M24x3', '1-5 Acme', '3/4-10 UNC'] as const;
const DIALS = [
  { dialStep: 5e-6, dialTurn: 1e-3 }, // 0.01 mm graduations, read to the half
  { dialStep: 6.35e-6, dialTurn: 2.54e-3 }, // 0.0005 in graduations, read to the half
  { dialStep: 2e-6, dialTurn: 0.2e-3 }, // 0.002 mm graduations
] as const;

/** Draws from ranges and lists. */
export function chooser({ uniform }: RandomSource) {
  return {
    between: (low: number, high: number): number => low + (high - low) * uniform(),
    /** A size as it would be measured: a whole number of steps. */
    size: (low: number, high: number, step: number): number =>
      step * Math.round((low + (high - low) * uniform()) / step),
    among: <Item>(items: readonly Item[]): Item =>
      items[Math.floor(uniform() * items.length)] as Item,
  };
}

function knownMill({ size, among }: ReturnType<typeof chooser>): KnownMill {
  const wheelDiameter = size(0.4, 0.7, 0.01);
  return {
    screwThread: among(THREADS),
    collarDiameter: size(0.028, 0.04, 0.001),
    collarIsBearing: among([true, false]),
    bodyWidth: size(0.026, 0.036, 0.0005),
    thickness: among([0.9e-3, 1e-3, 1.1e-3]),
    wheelDiameter,
    centreDistance: wheelDiameter + size(0.7, 1.2, 0.01),
    gaugeLength: size(0.4, 0.7, 0.05),
    ...among(DIALS),
    turnStep: 1 / 24,
  };
}

/** What hides in the readings of any mill. */
export type HiddenRig = Pick<
  HiddenMill,
  'coilShift' | 'coilStress' | 'repeatability' | 'torqueScatter' | 'barWarming'
>;

/** Draws what hides in the readings. */
export function hiddenRig({
  between,
  among,
}: Pick<ReturnType<typeof chooser>, 'between' | 'among'>): HiddenRig {
  return {
    coilShift: among([1, -1]) * between(40e-6, 250e-6),
    coilStress: between(2e6, 9e6),
    repeatability: between(2e-6, 6e-6),
    torqueScatter: between(0.005, 0.015),
    barWarming: between(0, 0.8),
  };
}

function hiddenMill(known: KnownMill, { between, among }: ReturnType<typeof chooser>): HiddenMill {
  const { pitchDiameter, pitch, halfAngle } = thread(known.screwThread);
  return {
    youngsModulus: between(202e9, 208e9),
    screw: {
      meanDiameter: pitchDiameter,
      lead: pitch,
      halfAngle,
      threadFriction: between(0.1, 0.18),
      collarFriction: known.collarIsBearing ? between(0.003, 0.006) : between(0.09, 0.15),
      collarDiameter: known.collarDiameter,
    },
    dragTorque: between(0.4, 2),
    frameStiffness: between(4e6, 12e6),
    slackTurns: between(0.2, 1),
    ...hiddenRig({ between, among }),
    slipChance: among([0, 0, 0.02]),
  };
}

/** The mill of a seed. @throws RangeError unless seed is whole, 0 to 2³² − 1 */
export function benchMill(seed: number): BenchMill {
  assertWhole('seed', seed, 0, 2 ** 32 - 1);
  const choose = chooser(randomSource(seed));
  const known = knownMill(choose);
  return { seed, known, hidden: hiddenMill(known, choose) };
}
