/**
 * What lies under the nut or the head of the worksheet's screw: its friction and the diameter that it rubs on, each
 * with its half-width. What is left empty is that of the thread's washer.
 * Units: SI only (m).
 * Source: definition; what stands for what is not known, assumptions.ts.
 */
import { screwSpreads } from '../../assumptions.ts';
import type { Collar } from '../../screw/collar.ts';
import { wornCollarDiameter } from '../../screw/collar.ts';
import type { Washer } from '../../threads.ts';
import type { WorksheetCollar, WorksheetTensioner } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { bearingFriction, washerDiameterSpread, washerFriction } from '../own-assumptions.ts';
import { worksheetWasher } from './thread.ts';

/** The two ends of a friction. */
interface Ends {
  readonly low: number;
  readonly high: number;
}

/** The collar at the middle of what is believed, and how far either number may be off. */
export interface CollarRange extends Collar {
  readonly frictionHalfWidth: number;
  readonly diameterHalfWidth: number; // m
  readonly between: Ends | undefined; // where the friction lies, known by its two ends
  readonly isAssumed: boolean; // nobody knows the friction
  readonly mayBeBearing: boolean; // it is as likely a ball bearing as that friction
}

type FrictionRange = Omit<CollarRange, 'collarDiameter' | 'diameterHalfWidth'>;
type DiameterRange = Pick<CollarRange, 'collarDiameter' | 'diameterHalfWidth'>;
type Ring = Extract<WorksheetCollar, { kind: 'bearing' | 'washer' }>;

const noFriction: FrictionRange = {
  collarFriction: 0,
  frictionHalfWidth: 0,
  between: undefined,
  isAssumed: false,
  mayBeBearing: false,
};

const fromEnds = (between: Ends): FrictionRange => ({
  ...noFriction,
  collarFriction: (between.low + between.high) / 2,
  frictionHalfWidth: (between.high - between.low) / 2,
  between,
});

const whileUnknown = (believed: FrictionRange): FrictionRange => ({ ...believed, isAssumed: true });

/** The collar, worn in; without one neither friction nor diameter. Refused where its hole is not inside it. */
export function worksheetCollar(tensioner: WorksheetTensioner): Outcome<CollarRange> {
  const { collar } = tensioner;
  if (collar.kind === 'none')
    return ready({ ...noFriction, collarDiameter: 0, diameterHalfWidth: 0 });
  const friction = frictionOf(collar);
  const diameter =
    collar.kind === 'unknown'
      ? whenReady({ washer: worksheetWasher(tensioner) }, ({ washer }) => ready(likeWasher(washer)))
      : diameterOf(collar, tensioner);
  return whenReady({ friction, diameter }, (known) =>
    ready({ ...known.friction, ...known.diameter }),
  );
}

function frictionOf(collar: Exclude<WorksheetCollar, { kind: 'none' }>): Outcome<FrictionRange> {
  if (collar.kind === 'bearing') return ready(fromEnds(bearingFriction));
  if (collar.kind === 'unknown') {
    const between = { low: bearingFriction.low, high: washerFriction.high };
    return ready(whileUnknown({ ...fromEnds(washerFriction), between, mayBeBearing: true }));
  }
  const { frictionLow, frictionHigh } = collar;
  const only = frictionLow ?? frictionHigh;
  if (only === undefined) return ready(whileUnknown(fromEnds(washerFriction)));
  const known = knownInputs({
    low: ['tensioner.collar.frictionLow', frictionLow ?? only, 'notNegative'],
    high: ['tensioner.collar.frictionHigh', frictionHigh ?? only, 'notNegative'],
  });
  return whenReady({ known }, ({ known: ends }) => {
    if (ends.low > ends.high)
      return refused('rangeBackwards', { ...ends }, [
        'tensioner.collar.frictionLow',
        'tensioner.collar.frictionHigh',
      ]);
    if (frictionLow !== undefined && frictionHigh !== undefined) return ready(fromEnds(ends));
    const frictionHalfWidth = screwSpreads.collarFriction * only;
    return ready({ ...noFriction, collarFriction: only, frictionHalfWidth });
  });
}

function likeWasher(washer: Washer): DiameterRange {
  const collarDiameter = wornCollarDiameter(washer);
  return { collarDiameter, diameterHalfWidth: washerDiameterSpread * collarDiameter };
}

function diameterOf(ring: Ring, tensioner: WorksheetTensioner): Outcome<DiameterRange> {
  const isMeasured = ring.outerDiameter !== undefined && ring.innerDiameter !== undefined;
  const washer: Outcome<Partial<Washer>> = isMeasured ? ready({}) : worksheetWasher(tensioner);
  return whenReady({ washer }, ({ washer }) => {
    const { outerDiameter = washer.outerDiameter, innerDiameter = washer.innerDiameter } = ring;
    const known = knownInputs({
      outerDiameter: ['tensioner.collar.outerDiameter', outerDiameter],
      innerDiameter: ['tensioner.collar.innerDiameter', innerDiameter, 'notNegative'],
    });
    return whenReady({ known }, ({ known: sizes }) => {
      if (sizes.innerDiameter >= sizes.outerDiameter)
        return refused('collarInsideOut', { ...sizes }, [
          'tensioner.collar.outerDiameter',
          'tensioner.collar.innerDiameter',
        ]);
      const measured = { collarDiameter: wornCollarDiameter(sizes), diameterHalfWidth: 0 };
      return ready(isMeasured ? measured : likeWasher(sizes));
    });
  });
}
