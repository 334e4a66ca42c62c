/**
 * One measurement by a plan, made up: what its readings would be, and how wide its interval is.
 * Units: SI only (m, Pa); loads are shares of the top load.
 * Source: derived here; toes and noise as in bench/mill.ts, the interval as on the worksheet.
 */
import { coverage, dialRepeatability, thermalExpansion } from '../assumptions.ts';
import { chooser, type HiddenRig, hiddenRig } from '../bench/mill.ts';
import { elongation } from '../elasticity.ts';
import type { RandomSource } from '../random.ts';
import { tQuantile } from '../student.ts';
import { type WorksheetBudget, worksheetBudget } from '../worksheet/budget.ts';
import { emptyWorksheet } from '../worksheet/empty.ts';
import type { StressScale } from '../worksheet/measure/stress.ts';
import { stressOfStretch, worksheetStressScale } from '../worksheet/measure/stress.ts';
import { stressInputs } from '../worksheet/measure/stress-inputs.ts';
import { roughReasons, widened } from '../worksheet/measure/verdict.ts';
import type { EnvelopeFit } from '../zero/envelope.ts';
import { envelopeFitter } from '../zero/envelope.ts';
import { envelopeMoments } from '../zero/estimate.ts';
import { zeroWarnings } from '../zero.ts';

/** How a band is to be measured. */
export interface MeasurementPlan {
  readonly gaugeLength: number; // m
  readonly graduation: number; // m, of the dial
  readonly readTo: number; // m, step to which the dial is read
  readonly firstShare: number; // of the top load, at the first reading; 0 to below 1
  readonly loads?: readonly number[] | undefined; // of a series, one for each step; evenly spaced without
  readonly steps: number; // readings in a series, 6 to 30
  readonly series: number; // 1 to 5
  readonly stressAtTop: number; // Pa
  readonly youngsModulus: number; // Pa
}

const READINGS_TO_WARM = 5; // after which the bar has taken 63 % of its warming
const DRAG_DOUBT = 0.01; // of the top load, standard: as on the invented mills

/** Loads of one series after the other, and to which each belongs. */
function takenLoads({ firstShare, loads, steps, series }: MeasurementPlan) {
  // The screw has to turn against something: nothing is read at no load.
  const least = 1 / (10 * steps);
  const from = Math.max(firstShare, least);
  const evenly = Array.from({ length: steps }, (_, i) => from + ((1 - from) * i) / (steps - 1));
  const one = loads?.map((load) => Math.max(load, least)) ?? evenly;
  const numbers = Array.from({ length: series }, (_, number) => number);
  return { loads: numbers.flatMap(() => one), series: numbers.flatMap((n) => one.map(() => n)) };
}

/** What the dial would show at each load, as growth in m. */
function madeUp(plan: MeasurementPlan, loads: readonly number[], random: RandomSource): number[] {
  const rig: HiddenRig = hiddenRig(chooser(random));
  const top = elongation({ ...plan, stress: plan.stressAtTop });
  const warming = thermalExpansion.steel * plan.gaugeLength * rig.barWarming;
  return loads.map((load, i) => {
    const reached = load * (1 + rig.torqueScatter * random.normal());
    const coil = rig.coilShift * Math.exp((-reached * plan.stressAtTop) / rig.coilStress);
    const warmed = warming * (1 - Math.exp(-(i % plan.steps) / READINGS_TO_WARM));
    const seen = top * reached + coil - warmed + rig.repeatability * random.normal();
    return plan.readTo * Math.round(seen / plan.readTo);
  });
}

function scaleOf({ youngsModulus, gaugeLength, graduation }: MeasurementPlan): StressScale {
  const band = { ...emptyWorksheet.band, youngsModulus };
  const rig = { ...emptyWorksheet.rig, gaugeLength, graduation };
  const scale = worksheetStressScale({ ...emptyWorksheet, band, rig });
  if (!scale.ready)
    throw new RangeError(`the plan must be within reach (${scale.waitsFor} was not)`);
  const { ready: _, ...known } = scale;
  return known;
}

/** The budget of the stress, as on the worksheet; undefined where the worksheet would give no stress. */
function budgetOf(
  fits: readonly EnvelopeFit[],
  loads: readonly number[],
  scale: StressScale,
  isJoined: boolean,
): WorksheetBudget | undefined {
  const { zero, elongation: stretch, degreesOfFreedom, probabilityLongToe } = envelopeMoments(fits);
  const judged = isJoined ? stretch : zero;
  const reach = tQuantile((1 + coverage.probability) / 2, degreesOfFreedom);
  const halfWidth = reach * judged.deviation * Math.sqrt(1 - 2 / degreesOfFreedom);
  const warnings = zeroWarnings(probabilityLongToe, halfWidth, stretch.value);
  if (warnings.includes('tooWideForStress') || warnings.includes('doesNotRise')) return undefined;
  const known = { stretch: stretch.value, standardUncertainty: stretch.deviation };
  const inputs = stressInputs(scale, { ...known, degreesOfFreedom, topTorque: 1 }, 0, DRAG_DOUBT);
  const zeroSeen = { warnings, torques: loads, dragTorque: 0, stretch: { topTorque: 1 } };
  const isRough = roughReasons(zeroSeen, inputs).length > 0;
  return worksheetBudget(stressOfStretch, widened(inputs, { grade: isRough ? 'rough' : 'good' }));
}

/** Makes up one measurement after the other: each has its budget, or none where it gives no stress. */
export function budgetSimulator(
  plan: MeasurementPlan,
): (random: RandomSource) => WorksheetBudget | undefined {
  const { loads, series } = takenLoads(plan);
  const scale = scaleOf(plan);
  const fit = envelopeFitter({ loads, series, variances: loads.map(() => 1) });
  const repeatability = Math.max(dialRepeatability, plan.readTo);
  return (random) =>
    budgetOf(fit(madeUp(plan, loads, random), repeatability), loads, scale, plan.series > 1);
}

/** The same as its half-width over the stress, without end where there is no stress. */
export function planSimulator(plan: MeasurementPlan): (random: RandomSource) => number {
  const simulate = budgetSimulator(plan);
  return (random) => {
    const budget = simulate(random);
    return budget ? budget.expandedUncertainty / budget.value : Number.POSITIVE_INFINITY;
  };
}
