/**
 * The stages of the account by a method that gives each of them a stress: that of the worksheet, or else a straight
 * line through the upper rows for all of them, so that no price mixes the two.
 * Units: SI only (Pa).
 * Source: definition.
 */
import { benchStages, type Learner, type Stage } from './costs.ts';
import type { LevelMill } from './levels.ts';
import { byUpperLine } from './upper-line.ts';
import type { Done } from './wrong-rows.ts';

/** The stages, and how they were worked out. */
export interface Priced {
  readonly stages: readonly Stage[];
  readonly isByUpperLine: boolean;
}

const isWhole = (stages: readonly Stage[]) =>
  stages.every(({ isMade, stress }) => !isMade || stress !== undefined);

/**
 * The stages; by the worksheet, with gaps, where not even the line gives them all a stress.
 * @throws RangeError where a row is no look of a series that was taken
 */
export function pricedStages(mill: LevelMill, done: Done, learner: Learner): Priced {
  const asWorksheet = { stages: benchStages(mill, done, learner), isByUpperLine: false };
  if (isWhole(asWorksheet.stages)) return asWorksheet;
  const stages = benchStages(mill, done, learner, byUpperLine);
  return isWhole(stages) ? { stages, isByUpperLine: true } : asWorksheet;
}
