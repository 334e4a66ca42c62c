/**
 * What the makers allow, as the card says it: of the measured band in a sentence, of another in a row of its block.
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

/** What tells the highest load, where that is not readings around it. */
function toldBy({ by, beyondReadings }: AllowedLoad): string {
  if (by === 'calculation') return ' (calculated)';
  return beyondReadings ? ' (beyond the readings)' : '';
}

const limitsSaid = (
  { makerLimitStress: stress, makerLimitWheelForce: force }: Limits,
  { quantity }: Shown,
): string =>
  [
    ...(stress === undefined ? [] : [quantity(stress, 'stress')]),
    ...(force === undefined ? [] : [`${quantity(force, 'force')} on the wheel`]),
  ].join(' and ');

/** What the makers allow the band that was measured, beside whose torque it stands, with the load not to pass where it is known, or that the load `set` may pass it; empty without a limit. */
export function limitWords(
  target: Limits,
  allowed: AllowedLoad | undefined,
  shown: Shown,
  set?: number,
): string {
  const limits = limitsSaid(target, shown);
  if (limits === '') return '';
  if (!allowed) return `The makers allow ${limits}.`;
  const most = notAbove(allowed.load, shown);
  if (set !== undefined && set > allowed.load)
    return `Above ${most} the stress may pass the ${limits} that the makers allow.`;
  return `Not above ${most}${toldBy(allowed)}: the makers allow ${limits}.`;
}

/** What is said of a load not to pass, and that load. */
export type LimitRow = readonly [label: string, load: string];

interface SetBelow {
  readonly allowed: number | undefined; // N·m or Pa
  readonly set: number;
}

/** The load that another band should not pass, or above which what is set may; the sheet holds the same limits against every band. */
export function limitRow(
  target: Limits,
  { allowed, set }: SetBelow,
  shown: Shown,
): LimitRow | undefined {
  if (allowed === undefined) return undefined;
  const limits = limitsSaid(target, shown);
  const label = set > allowed ? `May pass ${limits} above` : `Not above, for ${limits}`;
  return [label, notAbove(allowed, shown)];
}
