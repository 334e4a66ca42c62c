/**
 * What stands for an empty top of a plan: enough to cover what is in use, what the target needs and what was read so
 * far, and no more than the makers and the steel bear.
 * Units: N·m; Pa of a cylinder.
 * Source: our choice. A range from the readings counts with its upper end; one by calculation alone is too wide for that.
 */
import { signal } from '@preact/signals-core';
import { loadIn, type WorksheetResults } from '../../core/worksheet.ts';
import type { PlanAnswer } from '../state/answers.ts';
import type { SheetView } from '../state/view.ts';

/** Where the top of a plan comes from. */
export type TopFrom =
  | 'typed'
  | 'use'
  | 'targetByReadings'
  | 'targetByCalculation'
  | 'readings'
  | 'limits';

/** The top of a plan. */
export interface PlanTop {
  readonly torque: number; // N·m
  readonly from: TopFrom;
}

/** What a default top may come from. */
export interface TopSources extends Pick<WorksheetResults, 'series' | 'setting' | 'theorySetting'> {
  readonly use: number | undefined; // N·m
}

/** The highest of them, the first of equals; undefined while there is none. */
export function coveringTop(sources: TopSources): PlanTop | undefined {
  const { series, setting, theorySetting, use } = sources;
  const tops: readonly (PlanTop | false)[] = [
    use !== undefined && { torque: use, from: 'use' },
    series.ready && { torque: series.topTorque, from: 'readings' },
    setting.ready && { torque: setting.torqueHigh, from: 'targetByReadings' },
    !setting.ready &&
      theorySetting.ready && { torque: theorySetting.torque, from: 'targetByCalculation' },
  ];
  const known = tops.filter((top) => top !== false);
  return known.reduce<PlanTop | undefined>(
    (best, top) => (best && best.torque >= top.torque ? best : top),
    undefined,
  );
}

/** A load that was found too high for the limits of a sheet, and the highest that is not. */
interface Held {
  readonly about: string; // the question about that load, without its plan
  readonly highest: number; // N·m
}

const heldOn = new WeakMap<SheetView, ReturnType<typeof signal<Held | undefined>>>();

function heldOf(sheet: SheetView) {
  const held = heldOn.get(sheet) ?? signal<Held | undefined>(undefined);
  heldOn.set(sheet, held);
  return held;
}

/** What tells whether a load is too high. */
function aboutOf(sheet: SheetView): string {
  const { mill, band, tensioner, target } = sheet.worksheet() ?? {};
  return JSON.stringify([mill, band, tensioner, target, sheet.result('measured')]);
}

/** The highest load that the makers and the steel bear, where a top was found to pass them; common practice is no limit. */
export function highestBorne({ tooHigh = [] }: Pick<PlanAnswer, 'tooHigh'>): number | undefined {
  return tooHigh.filter(({ guard }) => guard.code !== 'outsideCommonPractice').at(-1)?.highest;
}

/** Keeps the default top of a sheet to what an answer about it has found; a typed one is only told of. */
export function holdTop(sheet: SheetView, from: TopFrom, answer: PlanAnswer): void {
  const highest = highestBorne(answer);
  if (from === 'typed' || highest === undefined) return;
  heldOf(sheet).value = { about: aboutOf(sheet), highest };
}

/** What stands for the empty box on a sheet; undefined while nothing does. */
export function defaultTop(sheet: SheetView): PlanTop | undefined {
  const [worksheet, results] = [sheet.worksheet(), sheet.results()];
  if (!worksheet || !results) return undefined;
  const top = coveringTop({ ...results, use: loadIn(worksheet, worksheet.use) });
  const held = heldOf(sheet).value;
  if (!top || !held || held.about !== aboutOf(sheet) || held.highest >= top.torque) return top;
  return { torque: held.highest, from: 'limits' };
}
