/**
 * What is believed of the losses in the worksheet's screw: a range of thread friction or of
 * efficiency, and the collar.
 * Units: SI only (m).
 * Source: definition.
 */
import type { Collar } from '../../screw/collar.ts';
import { wornCollarDiameter } from '../../screw/collar.ts';
import type { WorksheetTensioner } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';

/** The two ends of a range. */
export interface LossRange {
  readonly low: number;
  readonly high: number;
}

/** The range believed; refused where it is the wrong way round or an efficiency exceeds 1. */
export function worksheetLossRange({ friction }: WorksheetTensioner): Outcome<LossRange> {
  const ends = knownInputs({
    low: ['tensioner.friction.low', friction.low],
    high: ['tensioner.friction.high', friction.high],
  });
  return whenReady({ ends }, ({ ends: { low, high } }) => {
    if (low > high)
      return refused('rangeBackwards', { low, high }, [
        'tensioner.friction.low',
        'tensioner.friction.high',
      ]);
    if (friction.kind === 'efficiency' && high > 1)
      return refused('efficiencyAboveOne', { high }, ['tensioner.friction.high']);
    return ready({ low, high });
  });
}

/** The collar, worn in; without one neither friction nor diameter. Refused where its hole is not inside it. */
export function worksheetCollar({ collar }: WorksheetTensioner): Outcome<Collar> {
  if (collar === undefined) return ready({ collarFriction: 0, collarDiameter: 0 });
  const known = knownInputs({
    friction: ['tensioner.collar.friction', collar.friction, 'notNegative'],
    outerDiameter: ['tensioner.collar.outerDiameter', collar.outerDiameter],
    innerDiameter: ['tensioner.collar.innerDiameter', collar.innerDiameter, 'notNegative'],
  });
  return whenReady({ known }, ({ known: { friction, outerDiameter, innerDiameter } }) => {
    if (innerDiameter >= outerDiameter)
      return refused('collarInsideOut', { outerDiameter, innerDiameter }, [
        'tensioner.collar.outerDiameter',
        'tensioner.collar.innerDiameter',
      ]);
    const collarDiameter = wornCollarDiameter({ outerDiameter, innerDiameter });
    return ready({ collarFriction: friction, collarDiameter });
  });
}
