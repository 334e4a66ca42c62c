/**
 * What is said of a setting in few words: its torques, and what to do before one is relied on.
 * Units: SI in, the reader's out.
 */
import type { BandSetting, HeldBack, SettingReach } from '../../core/worksheet.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { Shown } from '../state/shown.ts';

/** What is said of a setting that is held back; what to do where the two are apart is told once for all. */
export function notYet(held: HeldBack, shown: Shown): string {
  if (held.by === 'row') return `Not yet: check ${shown.row(held.row)} first.`;
  return held.by === 'apart' ? 'Not yet.' : 'Not yet: choose a lower target.';
}

/** How far the readings go, N·m, behind what goes further. */
export const measuredUpTo = (topTorque: number, { quantity, load }: Shown): string =>
  ` (your readings end at ${quantity(topTorque, load.name)})`;

/** Where a range of torques, N·m, passes the highest reading, how far was measured; of one that lies above it more is said. */
export const untriedWords = (
  { torque, torqueHigh }: Pick<SettingReach, 'torqueHigh'> & { readonly torque: number },
  topTorque: number | undefined,
  shown: Shown,
): string =>
  topTorque !== undefined && torque <= topTorque && torqueHigh > topTorque
    ? measuredUpTo(topTorque, shown)
    : '';

/** Behind a torque, N·m, above the highest reading: how far was measured, and what to do first, with which band. */
export const beyondWords = (
  { torque }: { readonly torque: number },
  topTorque: number | undefined,
  shown: Shown,
  place?: number, // of the other band that it is for
): string =>
  `: provisional${topTorque === undefined ? '' : measuredUpTo(topTorque, shown)}. ${measureFirst(torque, shown, place)}`;

/** What to do before a torque above the readings, N·m, is set. */
export const measureFirst = (torque: number, { quantity, load }: Shown, place?: number): string =>
  `Measure ${place === undefined ? '' : 'this band '}up to ${quantity(torque, load.name)} first.`;

/** The stress that a torque gives, and the torques that the target may need. */
export const reachWords = (reach: SettingReach, { plusMinus, range, load }: Shown) => ({
  gives: plusMinus(reach.stress, reach.expandedUncertainty, 'stress'),
  needs: range(reach.torqueLow, reach.torqueHigh, load.name),
});

/** What another band is called. */
export const bandName = ({ name }: Pick<BandSetting, 'name'>, place: number): string =>
  name || `Other band ${place + 1}`;

/** A torque in the other unit that wrenches have in the US; nothing elsewhere. */
export function inOtherUnit(torque: number, { system, load, kindOf }: Shown): string | undefined {
  if (system !== 'us' || load.name !== 'torque') return undefined;
  return formatQuantity(torque, kindOf('torque') === 'torque' ? 'inchTorque' : 'torque', system);
}
