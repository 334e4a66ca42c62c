/**
 * Why a setting is held back for now: theory and measurement do not agree, a rough series has a row to be looked at
 * again, or it may pass what a maker allows and no good readings reach so far.
 * Units: none.
 * Source: our choice: no one is sent where a slip may have drawn the line, or beyond a limit to measure.
 */
import type { Verdict } from '../measure/verdict.ts';
import { type Compared, isApart } from './apart.ts';
import type { WorksheetGuard, WorksheetGuardCode } from './rails.ts';

/** What holds a setting back. */
export type HeldBack =
  | { readonly by: 'apart' }
  | { readonly by: 'row'; readonly row: number }
  | { readonly by: 'limit' };

/** What is known of the whole sheet. */
export interface Judged extends Compared {
  readonly verdict: Verdict | undefined;
  readonly guards: readonly WorksheetGuard[] | undefined;
}

/** The setting that is asked about: that of the other band at a place, else the first one's. */
export interface AskedSetting {
  readonly beyondReadings: boolean;
  readonly place?: number | undefined;
}

const DOUBTS_A_ROW: ReadonlySet<WorksheetGuardCode> = new Set([
  'oddRow',
  'missedDialTurn',
  'dialFalls',
]);

const MAY_EXCEED: ReadonlySet<WorksheetGuardCode> = new Set([
  'mayExceedBandLimit',
  'mayExceedMillLimit',
]);

/** Whether a guard is about the other band at a place; without a place, about the first band or the whole sheet. */
export const isAboutBand = ({ inputs }: Pick<WorksheetGuard, 'inputs'>, place?: number): boolean =>
  place === undefined
    ? !inputs[0]?.startsWith('bands.')
    : inputs[0]?.startsWith(`bands.${place}.`) === true;

/** What may pass a maker's limit, of the guards about one band. */
export const mayExceed = (guards: readonly WorksheetGuard[], place?: number): boolean =>
  guards.some((guard) => MAY_EXCEED.has(guard.code) && isAboutBand(guard, place));

/** The first thing that holds a setting back; undefined where nothing does. */
export function heldBack(
  { agreement, verdict, guards = [] }: Judged,
  { beyondReadings, place }: AskedSetting,
): HeldBack | undefined {
  if (isApart({ agreement })) return { by: 'apart' };
  const row = guards.find(({ code }) => DOUBTS_A_ROW.has(code))?.values['row'];
  if (verdict?.grade === 'rough' && row !== undefined) return { by: 'row', row };
  const isTried = verdict?.grade === 'good' && !beyondReadings;
  return !isTried && mayExceed(guards, place) ? { by: 'limit' } : undefined;
}
