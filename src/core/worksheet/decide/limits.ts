/**
 * What the makers of band and mill allow, held against the worksheet's readings and its ways of setting.
 * Units: SI only (Pa, N·m).
 * Source: definition; a force at the wheel as a stress by tightness.ts.
 */
import { strandStress } from '../../section.ts';
import { stressAtWheelLimit, type WindowEdge } from '../../tightness.ts';
import type { Worksheet } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import { loadIn, loadName } from '../load.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import type { AllowedLoad } from './allowed-load.ts';
import type { RailContext, WorksheetGuard } from './rails.ts';
import type { WayResult } from './ways.ts';

/** What the makers allow, as stresses of this band, Pa; without a limit that is not filled, or cannot be told. */
export function makersEdges(
  { target }: Worksheet,
  { section, strands }: Pick<RailContext, 'section' | 'strands'>,
): readonly WindowEdge<'bandMaker' | 'millMaker'>[] {
  const { makerLimitStress: band, makerLimitWheelForce: mill } = target;
  const ofBand = isUsable(band) ? [{ cause: 'bandMaker', stress: band } as const] : [];
  if (!isUsable(mill) || !section.ready || !strands.ready) return ofBand;
  const stress =
    strands.strandCount === 1
      ? strandStress(mill, section.area)
      : stressAtWheelLimit(mill, section.area, strands.strandHalfAngle);
  return [...ofBand, { cause: 'millMaker', stress }];
}

/** The highest stress that both makers allow, Pa; undefined where no limit is filled, or it cannot be told. */
export function allowedStress(
  worksheet: Worksheet,
  context: Pick<RailContext, 'section' | 'strands'>,
): number | undefined {
  const limits = makersEdges(worksheet, context).map(({ stress }) => stress);
  return limits.length === 0 ? undefined : Math.min(...limits);
}

/** Tells where the series itself went beyond what is allowed. */
export function readingsBeyondAllowed(
  measured: Outcome<MeasuredResult>,
  allowed: number | undefined,
): readonly WorksheetGuard[] {
  if (!measured.ready || allowed === undefined || measured.stress <= allowed) return [];
  const values = { stress: measured.stress, allowed };
  return [{ code: 'readingsAboveAllowed', level: 'warn', values, inputs: ['readings'] }];
}

/** Tells where the load in use may be more than the makers allow, uncertainty included. */
export function useBeyondAllowed(
  worksheet: Worksheet,
  highest: AllowedLoad | undefined,
): readonly WorksheetGuard[] {
  const used = loadIn(worksheet, worksheet.use);
  if (!highest || !isUsable(used) || used <= highest.load) return [];
  const values = { torque: used, highest: highest.load };
  return [
    {
      code: 'useMayExceed',
      level: 'warn',
      values,
      inputs: [`use.${loadName(worksheet.tensioner)}`],
    },
  ];
}

/** Tells which ways go beyond what is allowed, and which beyond what was measured. */
export function waysBeyond(
  worksheet: Worksheet,
  ways: readonly WayResult[],
  measured: Outcome<MeasuredResult>,
  allowed: number | undefined,
): readonly WorksheetGuard[] {
  return ways.flatMap((way, place) => [
    ...aboveAllowed(way, place, allowed),
    ...aboveReadings(loadOfWay(worksheet, place), place, way, measured),
  ]);
}

const loadOfWay = (worksheet: Worksheet, place: number): number => {
  const way = worksheet.ways[place];
  return (way && loadIn(worksheet, way)) ?? 0;
};

function aboveAllowed(
  { fromTorque, fromReadings }: WayResult,
  place: number,
  allowed: number | undefined,
): readonly WorksheetGuard[] {
  const stresses = [fromTorque, fromReadings].flatMap((way) => (way.ready ? [way.stress] : []));
  const stress = Math.max(...stresses); // of none: less than any
  if (allowed === undefined || stress <= allowed) return [];
  const values = { stress, allowed };
  return [{ code: 'wayAboveAllowed', level: 'warn', values, inputs: [`ways.${place}`] }];
}

function aboveReadings(
  torque: number,
  place: number,
  { fromTorque }: WayResult,
  measured: Outcome<MeasuredResult>,
): readonly WorksheetGuard[] {
  if (!measured.ready || !fromTorque.ready) return [];
  const { topTorque } = measured;
  if (torque <= topTorque) return [];
  const values = { torque, topTorque };
  return [{ code: 'wayBeyondReadings', level: 'note', values, inputs: [`ways.${place}`] }];
}
