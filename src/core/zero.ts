/**
 * Where stretching begins: the reading that the dial would show on a straight band without tension.
 * Units: readings in m, growing with stretch; torques in N·m; turns in turns.
 * Source: derived here and tested by simulation (tests/study); the straight part carried back to no
 * load is the toe compensation of ASTM D638 annex A1.
 */
import { assertAtLeast, assertList, assertPositive } from './assert.ts';
import { coverage, dialRepeatability } from './assumptions.ts';
import { fitLine } from './line.ts';
import { tQuantile } from './student.ts';
import { envelopeFits } from './zero/envelope.ts';
import { envelopeEstimate, meanElongation, meanScatter } from './zero/estimate.ts';
import {
  assertLongEnough,
  type LoadedReadings,
  loadedReadings,
  type TorqueSeries,
} from './zero/torque-series.ts';

export { zeroByNeedle, zeroByRuler } from './zero/by-eye.ts';
export { coilSetLeft, coilShift, gaugeWeightShift } from './zero/false-zero.ts';
export { type TurnsSeries, type ZeroFromTurns, zeroFromTurns } from './zero/from-turns.ts';

const WIDE = 0.15; // half-width of the interval of zero over the elongation: worth a warning
const TOO_WIDE = 0.4; // the same: no stress should be given
const NEVER_STRAIGHT = 0.5; // probability of a toe that reaches far up the load
const FEWEST_UPPER_HALF = 4; // readings that the classroom rule fits

/** A loading series with what is known of its scatter. */
export interface ScatteredTorqueSeries extends TorqueSeries {
  readonly repeatability?: number; // m, standard deviation of a reading at one setting, > 0
  readonly torqueScatter?: readonly number[]; // N·m, standard uncertainty of each torque, at random
  readonly known?:
    | { readonly elongation: number; readonly standardUncertainty: number }
    | undefined; // m, the elongation from elsewhere
}

/** Where stretching begins on the dial of one series, with its 95 % interval, in m. */
export interface SeriesZero {
  readonly series: number; // its number, as given
  readonly zero: number;
  readonly standardUncertainty: number;
  readonly low: number;
  readonly high: number;
}

/** What to tell the reader about a zero found from torque. */
export type ZeroWarning = 'doesNotRise' | 'wideInterval' | 'tooWideForStress' | 'neverStraight';

/** Zero, of the last series where there are several, and elongation at the top torque, each with its 95 % interval, in m. */
export interface ZeroFromTorque extends Omit<SeriesZero, 'series'> {
  readonly zeros: readonly SeriesZero[]; // of each series with readings above the drag torque
  readonly elongation: number; // from no tension to the top torque; the stress comes from this
  readonly sdElongation: number;
  readonly elongationLow: number;
  readonly elongationHigh: number;
  readonly degreesOfFreedom: number; // of both
  readonly kept: readonly number[]; // places of the readings above the drag torque
  readonly toe: readonly number[]; // m, what the toe adds to each reading kept
  readonly probabilityNoToe: number;
  readonly warnings: readonly ZeroWarning[];
}

/**
 * Zero and elongation of a loading series by the envelope method: a line, plus a toe of unknown
 * shape that dies with load. Several series of one band have one elongation and a zero each. The
 * uncertainty of the drag torque is not in it.
 * @throws RangeError unless one series has 6 readings above the drag torque and 3 in the upper half
 */
export function zeroFromTorque(series: ScatteredTorqueSeries): ZeroFromTorque {
  const loaded = loadedReadings(series);
  const { repeatability = dialRepeatability } = series;
  assertLongEnough(loaded);
  assertPositive('repeatability', repeatability, 'm');
  const estimate = envelopeEstimate(fitsOf(series, loaded, repeatability), coverage.probability);
  const { elongation } = estimate;
  const zeros = estimate.zeros.map(({ value, deviation, low, high }, place) => {
    const number = loaded.numbers[place] as number;
    return { series: number, zero: value, standardUncertainty: deviation, low, high };
  });
  const { series: _, ...last } = zeros.at(-1) as SeriesZero;
  // Of one series zero and elongation are equally vague; several make the elongation the surer of the two.
  const { low, high } = zeros.length > 1 ? elongation : last;
  return {
    ...last,
    zeros,
    elongation: elongation.value,
    sdElongation: elongation.deviation,
    elongationLow: elongation.low,
    elongationHigh: elongation.high,
    degreesOfFreedom: estimate.degreesOfFreedom,
    kept: loaded.kept,
    toe: estimate.toe,
    probabilityNoToe: estimate.probabilityNoToe,
    warnings: zeroWarnings(estimate.probabilityLongToe, (high - low) / 2, elongation.value),
  };
}

/** Several loading series of one band over one drag torque. */
export interface SeveralTorqueSeries {
  readonly series: readonly Pick<TorqueSeries, 'torques' | 'readings'>[];
  readonly dragTorque: number; // N·m, at least 0
  readonly repeatability?: number; // m, > 0
}

/** `zeroFromTorque` of series that are kept apart; they are numbered from 1. @throws RangeError as that does */
export function zeroFromSeveral({ series, ...shared }: SeveralTorqueSeries): ZeroFromTorque {
  return zeroFromTorque({
    ...shared,
    torques: series.flatMap(({ torques }) => torques),
    readings: series.flatMap(({ readings }) => readings),
    series: series.flatMap(({ torques }, place) => torques.map(() => place + 1)),
  });
}

/** The fits to the readings that feel the load, with the scatter of their torques. */
function fitsOf(
  { torques, torqueScatter = torques.map(() => 0), known }: ScatteredTorqueSeries,
  { kept, loads, readings, range, series }: LoadedReadings,
  repeatability: number,
) {
  assertList('torqueScatter', torqueScatter, torques.length, 'N·m');
  const taken = { loads, readings, series, repeatability };
  const even = loads.map(() => 1);
  // The fit takes every variance in terms of the readings' own, which a first pass finds.
  const elsewhere = known && {
    elongation: known.elongation,
    weight:
      (meanScatter(envelopeFits({ ...taken, variances: even })) / known.standardUncertainty) ** 2,
  };
  const data = { ...taken, known: elsewhere };
  // The scatter of the torques counts by the slope, which a first pass finds without it.
  const steady = envelopeFits({ ...data, variances: even });
  const perTorque = meanElongation(steady) / range / repeatability;
  const variances = kept.map((i) => 1 + (perTorque * (torqueScatter[i] as number)) ** 2);
  const scattered = variances.some((variance) => variance > 1);
  return scattered ? envelopeFits({ ...data, variances }) : steady;
}

/** What to tell of a zero that is known to ± a half-width, m, beside an elongation, m. */
export function zeroWarnings(
  probabilityLongToe: number,
  halfWidth: number,
  elongation: number,
): readonly ZeroWarning[] {
  const found: ZeroWarning[] = [];
  if (elongation <= 0) found.push('doesNotRise');
  else if (halfWidth > TOO_WIDE * elongation) found.push('tooWideForStress');
  else if (halfWidth > WIDE * elongation) found.push('wideInterval');
  if (probabilityLongToe > NEVER_STRAIGHT) found.push('neverStraight');
  return found;
}

/** Zero by the classroom rule, with what the line through the upper half says of the elongation. */
export interface ZeroByUpperHalf {
  readonly zero: number; // m
  readonly standardUncertainty: number; // m
  readonly low: number; // m, 95 %
  readonly high: number; // m
  readonly elongation: number; // m, from no tension to the top torque
  readonly sdElongation: number; // m
  readonly degreesOfFreedom: number;
  readonly fitted: readonly number[]; // places of the readings in the line
}

/**
 * The classroom rule: the half of the readings at the highest torques (rounded up, at least 4),
 * settled beforehand, fitted by least squares and carried back to the drag torque;
 * zero ± t(n − 2)·s·√(1/n + x̄²/Sxx). @throws RangeError with fewer than 4 above the drag torque
 */
export function zeroByUpperHalf(series: TorqueSeries): ZeroByUpperHalf {
  const { kept, loads, readings } = loadedReadings(series);
  assertAtLeast('number of readings above the drag torque', kept.length, FEWEST_UPPER_HALF);
  const order = [...loads.keys()].sort((a, b) => (loads[a] as number) - (loads[b] as number));
  const upper = order.slice(-Math.max(FEWEST_UPPER_HALF, Math.ceil(order.length / 2)));
  const pick = (list: readonly number[]): number[] => upper.map((i) => list[i] as number);
  const line = fitLine(pick(loads), pick(readings));
  const reach = tQuantile((1 + coverage.probability) / 2, line.degreesOfFreedom) * line.sdIntercept;
  return {
    zero: line.intercept,
    standardUncertainty: line.sdIntercept,
    low: line.intercept - reach,
    high: line.intercept + reach,
    elongation: line.slope,
    sdElongation: line.sdSlope,
    degreesOfFreedom: line.degreesOfFreedom,
    fitted: pick(kept),
  };
}
