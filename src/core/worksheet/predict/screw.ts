/**
 * What the worksheet's screw gives back, over the range of losses that is believed.
 * Units: SI only (m, rad); efficiencies have no unit.
 * Source: definition; spreads of the collar's friction and of the pitch diameter, assumptions.ts.
 */
import { screwSpreads } from '../../assumptions.ts';
import type { ThreadShape } from '../../screw/shape.ts';
import { leadAngle } from '../../screw/shape.ts';
import type { Screw } from '../../screw/torque.ts';
import { effectiveFriction, efficiency, selfLockingFriction } from '../../screw/torque.ts';
import type { UncertainInput } from '../../statistics/uncertain-input.ts';
import type { Washer } from '../../threads.ts';
import { rectangular } from '../budget.ts';
import type { WorksheetTensioner } from '../inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { collarAssumptions, frictionAssumptions, type Assumption } from './assumed.ts';
import { type CollarRange, worksheetCollar } from './collar.ts';
import type { LossRange } from './losses.ts';
import { worksheetLossRange } from './losses.ts';
import { worksheetThread, worksheetWasher } from './thread.ts';

/** Efficiencies at the two ends and the middle of the range believed. */
export interface ScrewResult {
  readonly lead: number; // m
  readonly efficiencyLow: number;
  readonly efficiency: number;
  readonly efficiencyHigh: number;
  readonly washer: Washer; // the plain one that belongs to the thread
  readonly operands: ScrewOperands | undefined; // undefined where an efficiency is given
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

/** The screw as far as it is known; refused (`frictionJams`) where the friction believed would jam it. */
export function worksheetScrew(tensioner: WorksheetTensioner): Outcome<ScrewModel> {
  const range = worksheetLossRange(tensioner);
  const shape = worksheetThread(tensioner);
  const washer = worksheetWasher(tensioner);
  return whenReady({ range, shape, washer }, ({ range, shape, washer }) => {
    if (range.of === 'efficiency') return byEfficiency(range, shape.lead, washer);
    return whenReady({ collar: worksheetCollar(tensioner) }, ({ collar }) =>
      byFriction({ range, shape, collar, washer }, [
        ...frictionAssumptions(range),
        ...collarAssumptions(tensioner.collar, collar),
      ]),
    );
  });
}

/** The screw's plain numbers, without its functions. */
export function screwNumbers(screwOutcome: Outcome<ScrewModel>): Outcome<ScrewResult> {
  return whenReady({ screw: screwOutcome }, ({ screw: { inputs, efficiencyOf, assumed, ...numbers } }) =>
    ready(numbers),
  );
}

function byEfficiency({ low, high }: LossRange, lead: number, washer: Washer): Outcome<ScrewModel> {
  const middle = (low + high) / 2;
  return ready<ScrewModel>({
    lead,
    efficiencyLow: low,
    efficiency: middle,
    efficiencyHigh: high,
    washer,
    operands: undefined,
    inputs: { efficiency: rectangular(middle, (high - low) / 2) },
    efficiencyOf: ({ efficiency = 0 }) => efficiency,
    assumed: [],
  });
}

/** Whether no torque turns the thread any more, so that nothing of it comes back. */
function isJammed(screw: Screw): boolean {
  return effectiveFriction(screw) * Math.tan(leadAngle(screw)) >= 1;
}

interface KnownParts {
  readonly range: LossRange;
  readonly shape: ThreadShape;
  readonly collar: CollarRange;
  readonly washer: Washer;
}

/** The screw at an end of what is believed; a collar's friction goes along where it is assumed too. */
function atEnd(screw: Screw, { range, collar }: KnownParts, end: 'low' | 'high'): Screw {
  const sign = { low: -1, high: 1 }[end];
  const assumed = collar.isFrictionAssumed ? sign * collar.frictionHalfWidth : 0;
  return {
    ...screw,
    threadFriction: range[end],
    collarFriction: collar.collarFriction + assumed,
  };
}

function byFriction(parts: KnownParts, assumed: readonly Assumption[]): Outcome<ScrewModel> {
  const { range, shape, collar, washer } = parts;
  const { meanDiameter, lead, halfAngle } = shape;
  const { collarFriction, collarDiameter } = collar;
  const threadFriction = (range.low + range.high) / 2;
  const screw = { meanDiameter, lead, halfAngle, threadFriction, collarFriction, collarDiameter };
  if (isJammed({ ...screw, threadFriction: range.high }))
    return refused('frictionJams', { high: range.high }, ['tensioner.friction.high']);
  return ready<ScrewModel>({
    lead,
    efficiencyLow: efficiency(atEnd(screw, parts, 'high')),
    efficiency: efficiency(screw),
    efficiencyHigh: efficiency(atEnd(screw, parts, 'low')),
    washer,
    operands: {
      ...screw,
      threadFrictionLow: range.low,
      threadFrictionHigh: range.high,
      leadAngle: leadAngle(screw),
      selfLockingFriction: selfLockingFriction(screw),
    },
    inputs: {
      threadFriction: rectangular(threadFriction, (range.high - range.low) / 2),
      meanDiameter: rectangular(meanDiameter, screwSpreads.pitchDiameter * meanDiameter),
      // A collar without friction adds nothing, and must not be tried with less than none.
      ...(collarFriction > 0 && {
        collarFriction: rectangular(collarFriction, collar.frictionHalfWidth),
      }),
      ...(collar.diameterHalfWidth > 0 && {
        collarDiameter: rectangular(collarDiameter, collar.diameterHalfWidth),
      }),
    },
    efficiencyOf: (values) => {
      const tried = { ...screw, ...values };
      return isJammed(tried) ? 0 : efficiency(tried); // a trial may draw a steeper lead
    },
    assumed,
  });
}
