/**
 * What is known of the worksheet's screw or cylinder: what it passes on, and what that hangs on.
 * Units: SI only (m, rad); efficiencies have no unit.
 * Source: definition.
 */
import type { Screw } from '../../screw/torque.ts';
import type { UncertainInput } from '../../statistics/uncertain-input.ts';
import type { Washer } from '../../threads.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { Assumption } from './assumed.ts';
import type { Drive } from './drive.ts';

/** Efficiencies at the two ends and the middle of the range believed. */
export interface ScrewResult {
  readonly drive: Drive;
  readonly efficiencyLow: number;
  readonly efficiency: number;
  readonly efficiencyHigh: number;
  readonly washer: Washer | undefined; // the plain one that belongs to the thread; a cylinder has none
  readonly operands: ScrewOperands | undefined; // undefined where an efficiency is given, and of a cylinder
}

/** The screw with what its efficiency hangs on, and the efficiency of any such values. */
export interface ScrewModel extends ScrewResult {
  readonly inputs: Readonly<Record<string, UncertainInput>>;
  readonly efficiencyOf: (values: Readonly<Record<string, number>>) => number;
  readonly assumed: readonly Assumption[];
}

/** The screw at the middle of its friction, with the friction at which its thread alone just holds. */
export interface ScrewOperands extends Screw {
  readonly threadFrictionLow: number;
  readonly threadFrictionHigh: number;
  readonly leadAngle: number; // rad
  readonly selfLockingFriction: number;
}

/** The screw's plain numbers, without its functions. */
export function screwNumbers(screwOutcome: Outcome<ScrewModel>): Outcome<ScrewResult> {
  return whenReady(
    { screw: screwOutcome },
    ({ screw: { inputs, efficiencyOf, assumed, ...numbers } }) => ready(numbers),
  );
}
