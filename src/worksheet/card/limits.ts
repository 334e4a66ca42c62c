/**
 * What the makers allow, as the card says it: a row in the block of each band.
 * Units: SI in, the reader's out.
 */
import type { AllowedLoad, Worksheet } from '../../core/worksheet.ts';
import { roundingDecimals } from '../../units/format-number.ts';
import { displayOf } from '../../units/kinds.ts';
import { fromSi, toSi } from '../../units/si-value.ts';
import type { Shown } from '../state/shown.ts';

type Limits = Pick<Worksheet['target'], 'makerLimitStress' | 'makerLimitWheelForce'>;

/** A load in the reader's unit, rounded down where rounding would pass it. */
function notAbove(most: number, { quantity, system, load: { name }, kindOf }: Shown): string {
  const amount = fromSi(most, kindOf(name), system);
  const decimals = roundingDecimals(amount, displayOf(kindOf(name), system).rounding);
  const step = 10 ** -decimals;
  return quantity(toSi(step * Math.floor(amount / step + NOISE), kindOf(name), system), name);
}

const NOISE = 1e-9; // of a step: what is a multiple but for it is kept

const limitsSaid = (
  { makerLimitStress: stress, makerLimitWheelForce: force }: Limits,
  { quantity }: Shown,
): string =>
  [
    ...(stress === undefined ? [] : [quantity(stress, 'stress')]),
    ...(force === undefined ? [] : [`${quantity(force, 'force')} on the wheel`]),
  ].join(' and ');

/** What is said of a load not to pass, and that load. */
export type LimitRow = readonly [label: string, load: string];

/** A load not to pass, in what it is told by, and the load that is to be set. */
interface SetBelow {
  readonly allowed: Partial<AllowedLoad> | undefined;
  readonly set: number | undefined; // N·m or Pa
}

/** The load that a band should not pass, or above which what is set may; the makers' number alone while no load is known, nothing without one. */
export function limitRow(
  target: Limits,
  { allowed, set = 0 }: SetBelow,
  shown: Shown,
): LimitRow | undefined {
  const limits = limitsSaid(target, shown);
  if (limits === '') return undefined;
  if (allowed?.load === undefined) return ['The makers allow', limits];
  const label =
    set > allowed.load
      ? `May pass ${limits} above`
      : `Never above (${limits}${allowed.by === 'calculation' ? ', calculated' : ''})`;
  return [label, notAbove(allowed.load, shown)];
}
