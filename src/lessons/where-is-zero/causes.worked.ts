/**
 * What the folds of the lesson tell: more series, a later start, a toe that is too long, the weight of the bar, a gauge
 * too near a wheel.
 * Units: SI; half-widths are shares of the stress.
 * Source: core/plan (made up measurements, as on the worksheet), core/zero, core/span; sizes of the bar are invented.
 */
import { planOutcome } from '../../core/plan.ts';
import { sectionArea, strandForce } from '../../core/section.ts';
import { endLength, flatBendingStiffness } from '../../core/span.ts';
import { coilSetLeft, gaugeWeightShift, zeroByUpperHalf, zeroFromTorque } from '../../core/zero.ts';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { TORQUES } from './taking.ts';
import { atRest } from './toe/rest.worked.ts';

const { drag, topTorque, stressPerTorque, youngsModulus, gaugeLength, height } = atRest;
const { bodyWidth, thickness, centreDistance, graduation } = OTTERSLEIGH;
const topStress = stressPerTorque * (topTorque - drag);
const area = sectionArea({ width: bodyWidth, thickness });

const MEASUREMENTS = 1000;
const SEED = 1;

/** Half-width over the stress that half of all measurements by a plan stay below. */
function reached(series: number, firstShare: number): number {
  const plan = {
    gaugeLength,
    graduation,
    readTo: graduation / 2,
    firstShare,
    steps: TORQUES.length,
    series,
    stressAtTop: topStress,
    youngsModulus,
  };
  return planOutcome(plan, MEASUREMENTS, SEED).median ?? 1;
}

const FIRST = ((TORQUES[0] ?? 0) - drag) / (topTorque - drag);
const EARLY = 0.03;
const TENTH = 0.1;

const LONG_TOE = { height: -0.1e-3, dyingStress: 60e6 }; // a clamp that creeps, a slide that sticks

/** A series without any scatter under a toe that lasts all the way up. */
function longToeSeries(count: number) {
  const torques = Array.from(
    { length: count },
    (_, place) => drag + ((place + 1) / count) * (topTorque - drag),
  );
  const readings = torques.map((torque) => {
    const stress = stressPerTorque * (torque - drag);
    const stretch = (stress * gaugeLength) / youngsModulus;
    return stretch + LONG_TOE.height * Math.exp(-stress / LONG_TOE.dyingStress);
  });
  return { torques, readings, dragTorque: drag };
}

/** What the classroom rule makes of it, and what the full method says. */
function longToe(count: number) {
  const series = longToeSeries(count);
  const { zero, low, high } = zeroByUpperHalf(series);
  const isTold = zeroFromTorque(series).warnings.includes('neverStraight');
  if (!isTold) throw new RangeError('the long toe must be one that the full method warns of');
  return { miss: Math.abs(zero), halfWidth: (high - low) / 2 };
}

const FEW = TORQUES.length;
const MANY = 4 * FEW;
const [few, many] = [longToe(FEW), longToe(MANY)];

const BAR_WEIGHT = 6; // N

const weightAt = (stress: number) =>
  gaugeWeightShift({ height, weight: BAR_WEIGHT, tension: strandForce(stress, area) });

const NEAR = 0.1; // m, from the wheel's axle to the nearer clamp
const AT_STRESS = 2e6; // Pa

/** Share of the curl left between the clamps, the nearer one a distance from the wheel. */
function curlLeft(distance: number): number {
  const bendingStiffness = flatBendingStiffness({ youngsModulus, width: bodyWidth, thickness });
  const from = distance - centreDistance / 2;
  return coilSetLeft({
    endLength: endLength({ tension: strandForce(AT_STRESS, area), bendingStiffness }),
    strand: centreDistance,
    from,
    to: from + gaugeLength,
  });
}

/** Those numbers, by the names of the model's outputs. */
export const causes = {
  oneSeries: reached(1, FIRST),
  twoSeries: reached(2, FIRST),
  threeSeries: reached(3, FIRST),
  earlyStart: reached(1, EARLY),
  laterStart: reached(1, TENTH),
  earlyShare: EARLY,
  laterShare: TENTH,
  longToeMiss: few.miss,
  longToeReach: few.halfWidth,
  manyMiss: many.miss,
  manyReach: many.halfWidth,
  fewReadings: FEW,
  manyReadings: MANY,
  barWeight: BAR_WEIGHT,
  weightAtTop: weightAt(topStress),
  weightAtQuarter: weightAt(topStress / 4),
  quarterStress: topStress / 4,
  nearDistance: NEAR,
  nearCurl: curlLeft(NEAR),
  middleCurl: curlLeft((centreDistance - gaugeLength) / 2),
  curlStress: AT_STRESS,
};
