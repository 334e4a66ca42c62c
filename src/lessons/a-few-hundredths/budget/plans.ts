/**
 * How the mill at Ottersleigh may be measured: from one series on a short bar to what would be better, one change at a
 * time.
 * Units: m, Pa.
 * Source: invented; what a dial and a series are, as on the worksheet.
 */
import type { MeasurementPlan } from '../../../core/plan.ts';
import { OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';

/** What the reader changes, beside the bar; the first is nothing. */
export const CHANGES = ['none', 'finerDial', 'threeSeries', 'laterStart'] as const;

/** One of them. */
export type Change = (typeof CHANGES)[number];

/** Bars for which the budgets are worked out, m; between them they are interpolated. */
export const BARS_TRIED = [0.25, 0.3, 0.4, 0.55, 0.8] as const;

/** The bar and the change with which the lesson starts. */
export const START = { bar: OTTERSLEIGH.gaugeLength, change: 'none' } as const;

const { graduation, targetStress, youngsModulus, gaugeLength } = OTTERSLEIGH;

/** One series from slack, read to half a mark. */
export const FIRST_PLAN: MeasurementPlan = {
  gaugeLength,
  graduation,
  readTo: graduation / 2,
  firstShare: 0,
  steps: 10,
  series: 1,
  stressAtTop: targetStress,
  youngsModulus,
};

/** What each change makes of it. */
export const CHANGED: Readonly<Record<Change, Partial<MeasurementPlan>>> = {
  none: {},
  finerDial: { graduation: graduation / 2, readTo: graduation / 4 },
  threeSeries: { series: 3 },
  laterStart: { firstShare: 0.1 },
};

/** How many made-up measurements the middle is taken of, and their seed. */
export const MADE_UP = { times: 61, seed: 1 } as const;
