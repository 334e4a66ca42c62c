/**
 * How often the interval shown at each stage held the truth, and how wide it was.
 * Units: shares, no unit.
 * Source: definition.
 */
import type { StudyMill } from './range-mills.ts';
import { type ShownInterval, STAGES, type Stage, sheetAt, shownInterval } from './range-stages.ts';

/** One stage over all mills. */
export interface StageTally {
  readonly shown: number; // mills that get an interval
  readonly held: number; // share of those whose interval holds the truth
  readonly halfWidth: number; // median, as a share of the interval's middle
  readonly wider: number; // mills whose interval is wider than at the stage before, beyond rounding
}

const ROUNDING = 1.01;

const halfWidth = ({ low, high }: ShownInterval): number => (high - low) / (high + low);

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** Counts every stage, or those named, over the mills, with so many trials to an interval. */
export function tallyStages<Named extends Stage = Stage>(
  mills: readonly StudyMill[],
  trials: number,
  stages: readonly Named[] = STAGES as readonly Stage[] as readonly Named[],
): Readonly<Record<Named, StageTally>> {
  const all = mills.map((mill) => ({
    ...mill,
    shown: stages.map((stage) => shownInterval(sheetAt(mill, stage), trials)),
  }));
  const tallies = stages.map((stage, at) => {
    const pairs = all.flatMap(({ truth, shown }) => {
      const interval = shown[at];
      return interval ? [{ truth, interval, before: shown[at - 1] }] : [];
    });
    const held = pairs.filter(
      ({ truth, interval }) => truth >= interval.low && truth <= interval.high,
    );
    const wider = pairs.filter(
      ({ interval, before }) => before && interval.firstOrder > ROUNDING * before.firstOrder,
    );
    const tally: StageTally = {
      shown: pairs.length,
      held: held.length / pairs.length,
      halfWidth: median(pairs.map(({ interval }) => halfWidth(interval))),
      wider: wider.length,
    };
    return [stage, tally] as const;
  });
  return Object.fromEntries(tallies) as Record<Named, StageTally>;
}
