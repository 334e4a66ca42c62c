/**
 * The worksheet's screw by its frictions: that of the thread, and that of what lies under its nut or head.
 * Units: SI only (m, rad); efficiencies have no unit.
 * Source: definition; the spread of the pitch diameter and the friction of a ball bearing, assumptions.ts.
 */
import { screwSpreads } from '../../assumptions.ts';
import type { ThreadShape } from '../../screw/shape.ts';
import { leadAngle, leadSlope } from '../../screw/shape.ts';
import type { Screw } from '../../screw/torque.ts';
import { effectiveFriction, efficiency, selfLockingFriction } from '../../screw/torque.ts';
import type { UncertainInputs } from '../../statistics/uncertain-input.ts';
import type { Washer } from '../../threads.ts';
import { anywhereIn, rectangular } from '../budget.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused } from '../outcome.ts';
import { bearingFriction } from '../own-assumptions.ts';
import type { Assumption } from './assumed.ts';
import type { CollarRange } from './collar.ts';
import type { LossRange } from './losses.ts';
import type { ScrewModel } from './screw-model.ts';

/** What the screw is made of. */
export interface ScrewParts {
  readonly range: LossRange; // of the thread's friction
  readonly shape: ThreadShape;
  readonly collar: CollarRange;
  readonly washer: Washer;
}

/** Whether no torque turns the thread any more, so that nothing of it comes back. */
const isJammed = (screw: Screw): boolean => effectiveFriction(screw) * leadSlope(screw) >= 1;

const onBalls = (bearingFriction.low + bearingFriction.high) / 2;

/** Friction of what is a ball bearing (0), what it was taken for (1), or either. */
const frictionBetween = (kind: number, friction: number): number =>
  onBalls + kind * (friction - onBalls);

/** The screw at the middle of what is believed. */
function middleScrew({ range, shape, collar }: ScrewParts): Screw {
  const { collarFriction, collarDiameter, mayBeBearing } = collar;
  return {
    meanDiameter: shape.meanDiameter,
    lead: shape.lead,
    halfAngle: shape.halfAngle,
    threadFriction: (range.low + range.high) / 2,
    collarFriction: mayBeBearing ? frictionBetween(0.5, collarFriction) : collarFriction,
    collarDiameter,
  };
}

function inputsOf({ range, shape, collar }: ScrewParts): UncertainInputs<string> {
  const { collarFriction, collarDiameter } = collar;
  return {
    threadFriction: anywhereIn(range),
    meanDiameter: rectangular(shape.meanDiameter, screwSpreads.pitchDiameter * shape.meanDiameter),
    // A collar without friction adds nothing, and must not be tried with less than none.
    ...(collarFriction > 0 && {
      collarFriction: rectangular(collarFriction, collar.frictionHalfWidth),
    }),
    ...(collar.diameterHalfWidth > 0 && {
      collarDiameter: rectangular(collarDiameter, collar.diameterHalfWidth),
    }),
    ...(collar.mayBeBearing && { collarKind: { value: 0.5, halfWidth: 0.5, shape: 'ends' } }),
  };
}

/** The screw by its frictions; refused (`frictionJams`) where the friction believed would jam it. */
export function rubbingScrew(
  parts: ScrewParts,
  assumed: readonly Assumption[],
): Outcome<ScrewModel> {
  const { range, collar, washer } = parts;
  const screw = middleScrew(parts);
  const { lead, halfAngle, collarDiameter: middleDiameter } = screw;
  if (isJammed({ ...screw, threadFriction: range.high }))
    return refused('frictionJams', { high: range.high }, ['tensioner.friction.high']);
  /** At an end of what is believed; a collar's friction goes along where its ends are known. */
  const efficiencyAt = (end: 'low' | 'high'): number =>
    efficiency({
      ...screw,
      threadFriction: range[end],
      collarFriction: collar.between?.[end] ?? screw.collarFriction,
    });
  return ready<ScrewModel>({
    drive: { kind: 'screw', lead },
    efficiencyLow: efficiencyAt('high'),
    efficiency: efficiency(screw),
    efficiencyHigh: efficiencyAt('low'),
    washer,
    operands: {
      ...screw,
      threadFrictionLow: range.low,
      threadFrictionHigh: range.high,
      leadAngle: leadAngle(screw),
      selfLockingFriction: selfLockingFriction(screw),
    },
    inputs: inputsOf(parts),
    efficiencyOf: (values) => {
      const { threadFriction = 0, meanDiameter = 0, collarFriction: typed = 0 } = values;
      const { collarDiameter = middleDiameter, collarKind } = values;
      const collarFriction = collarKind === undefined ? typed : frictionBetween(collarKind, typed);
      const tried = {
        lead,
        halfAngle,
        meanDiameter,
        collarDiameter,
        threadFriction,
        collarFriction,
      };
      return isJammed(tried) ? 0 : efficiency(tried); // a trial may draw a steeper lead
    },
    assumed,
  });
}
