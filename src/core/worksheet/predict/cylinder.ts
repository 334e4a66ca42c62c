/**
 * What the worksheet's cylinder passes on: all but what its seal takes, over the range that is believed.
 * Units: SI only (m, m²); shares have no unit.
 * Source: definition of pressure; the seal's share, own-assumptions.ts.
 */
import type { UncertainInputs } from '../../statistics/uncertain-input.ts';
import { anywhereIn, rectangular } from '../budget.ts';
import type { WorksheetTensioner } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { cylinderHalfWidth, sealFriction } from '../own-assumptions.ts';
import type { Assumption } from './assumed.ts';
import { cylinderSizes, oilArea } from './drive.ts';
import type { ScrewModel } from './screw-model.ts';

/** Share of the force that the seal takes. */
export interface SealRange {
  readonly low: number;
  readonly high: number;
  readonly isAssumed: boolean;
}

/** The range believed; refused where it is the wrong way round, or would leave nothing. */
export function worksheetSeal({
  cylinder: { sealLow, sealHigh },
}: WorksheetTensioner): Outcome<SealRange> {
  if (sealLow === undefined && sealHigh === undefined)
    return ready({ ...sealFriction, isAssumed: true });
  const ends = knownInputs({
    low: ['tensioner.cylinder.sealLow', sealLow ?? sealHigh, 'notNegative'],
    high: ['tensioner.cylinder.sealHigh', sealHigh ?? sealLow, 'notNegative'],
  });
  const both = ['tensioner.cylinder.sealLow', 'tensioner.cylinder.sealHigh'] as const;
  return whenReady<{ ends: typeof ends }, SealRange>({ ends }, ({ ends: { low, high } }) => {
    if (low > high) return refused('rangeBackwards', { low, high }, both);
    if (high >= 1) return refused('sealTakesAll', { high }, both);
    return ready({ low, high, isAssumed: false });
  });
}

function sealAssumptions({ low, high, isAssumed }: SealRange): readonly Assumption[] {
  const path = 'tensioner.cylinder.sealLow';
  const onceKnown = (high - low) / (4 * Math.sqrt(3)); // a maker's figure, to half of the range
  return isAssumed ? [{ name: 'sealFriction', path, low, high, onceKnown }] : [];
}

/** The cylinder as far as it is known. */
export function worksheetCylinder(tensioner: WorksheetTensioner): Outcome<ScrewModel> {
  const needs = { sizes: cylinderSizes(tensioner), seal: worksheetSeal(tensioner) };
  return whenReady<typeof needs, ScrewModel>(needs, ({ sizes, seal }) => {
    const { low, high } = seal;
    const area = oilArea(sizes);
    const inputs: UncertainInputs<string> = {
      sealFriction: anywhereIn(seal),
      pistonDiameter: rectangular(sizes.pistonDiameter, cylinderHalfWidth),
      ...(sizes.rodDiameter > 0 && {
        rodDiameter: rectangular(sizes.rodDiameter, cylinderHalfWidth),
      }),
    };
    return ready<ScrewModel>({
      drive: { kind: 'cylinder', pistonArea: area },
      efficiencyLow: 1 - high,
      efficiency: 1 - (low + high) / 2,
      efficiencyHigh: 1 - low,
      washer: undefined,
      operands: undefined,
      inputs,
      // What the area is tried at counts as part of what arrives.
      efficiencyOf: ({ sealFriction: seal = 0, pistonDiameter = 0, rodDiameter = 0 }) =>
        ((1 - seal) * oilArea({ pistonDiameter, rodDiameter })) / area,
      assumed: sealAssumptions(seal),
    });
  });
}
