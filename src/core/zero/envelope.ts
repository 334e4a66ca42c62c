/**
 * A straight line through readings that start in a toe of unknown shape: the toe is any smooth
 * curve inside an envelope that dies with load, of 31 sorts, each fitted and weighed by evidence.
 * Several series are joined with three times as many sorts, as their toes may be alike or not.
 * Units: load as a share of the top load; readings and what follows from them in m.
 * Source: Gaussian-process regression with explicit basis functions, Rasmussen and Williams (2006),
 * 2.7, from memory; the sorts and their weights are derived here and tested by simulation.
 */
import { type KnownElongation, type LineUnderToes, lineUnderToes } from './line-under-toes.ts';
import { type Design, toesOf } from './toes.ts';

const LENGTHS = [0.03, 0.05, 0.08, 0.13, 0.2, 0.3]; // share of the top load over which a toe dies
const HEIGHTS = [1, 3, 10, 30, 100]; // height of a toe in repeatabilities
const NO_TOE = { length: 1, height: 0 }; // without height the length is idle
const SHARES = [0, 0.5, 1]; // of a toe that comes back in the next series of several
const PRIOR_NO_TOE = 0.15;
const PRIOR_DEGREES_OF_FREEDOM = 2; // worth of the repeatability, against that of the residuals

/** Where readings are taken; all lists (n). `variances` are in squares of the repeatability. */
export interface EnvelopeLoads {
  readonly loads: readonly number[]; // share of the top load
  readonly variances: readonly number[];
  readonly series?: readonly number[]; // of each reading, counted from 0 without a gap; one if not said
  readonly known?: KnownElongation | undefined; // of the elongation, from elsewhere
}

/** Readings against load. */
export interface EnvelopeData extends EnvelopeLoads {
  readonly readings: readonly number[]; // m
  readonly repeatability: number; // m, > 0
}

/** One sort of toe with its line; the parameters follow Student's distribution about their values. */
export interface EnvelopeFit {
  readonly length: number; // share of the top load
  readonly height: number; // in repeatabilities; 0 without a toe
  readonly share: number; // of the toe that comes back in another series
  readonly weight: number; // all weights add up to 1
  readonly zeros: readonly number[]; // m, at no load, of each series
  readonly scaleZeros: readonly number[]; // m
  readonly elongation: number; // m, from no load to the top load
  readonly scaleElongation: number; // m
  readonly degreesOfFreedom: number;
  readonly scatter: number; // m, standard deviation of a reading by residuals and repeatability together
  readonly toe: Float64Array; // m, one for each reading
}

/** One sort of toe with what is believed of it beforehand. */
interface SortOfToe {
  readonly length: number;
  readonly height: number;
  readonly share: number;
  readonly prior: number;
}

/** The line under one sort of toe; `weight` is still the logarithm of the evidence. */
function fitUnder(
  { prior, ...sort }: SortOfToe,
  line: LineUnderToes,
  degreesOfFreedom: number,
  repeatability: number,
): EnvelopeFit {
  const squares = PRIOR_DEGREES_OF_FREEDOM * repeatability ** 2 + line.squares;
  const variance = squares / degreesOfFreedom;
  const series = line.parameters.length - 1;
  const scales = Array.from(line.variances, (each) => Math.sqrt(variance * each));
  const spread = line.logDeterminant + line.logInformation;
  return {
    ...sort,
    weight: Math.log(prior) - spread / 2 - (degreesOfFreedom / 2) * Math.log(squares),
    zeros: Array.from(line.parameters.subarray(0, series)),
    scaleZeros: scales.slice(0, series),
    elongation: line.parameters[series] as number,
    scaleElongation: scales[series] as number,
    degreesOfFreedom,
    scatter: Math.sqrt(variance),
    toe: line.toe,
  };
}

/** A column for each series and one for the loads, over the standard deviations of the readings. */
function designOf({ loads, variances, series = [] }: EnvelopeLoads): Design {
  const ones = Float64Array.from(variances, (variance) => 1 / Math.sqrt(variance));
  const starts = Array.from({ length: Math.max(0, ...series) + 1 }, (_, place) =>
    ones.map((one, i) => ((series[i] ?? 0) === place ? one : 0)),
  );
  return { ones, design: [...starts, ones.map((one, i) => one * (loads[i] as number))] };
}

/** All sorts of toe by their lengths; the first is none. */
function sortsOfToe(shares: readonly number[]): readonly (readonly SortOfToe[])[] {
  const prior = (1 - PRIOR_NO_TOE) / (LENGTHS.length * HEIGHTS.length * shares.length);
  const sorts = shares.flatMap((share) => HEIGHTS.map((height) => ({ height, share, prior })));
  return [
    [{ ...NO_TOE, share: 1, prior: PRIOR_NO_TOE }],
    ...LENGTHS.map((length) => sorts.map((sort) => ({ length, ...sort }))),
  ];
}

/** Fits lines to readings, m, that repeat to a standard deviation, m, > 0. */
export type EnvelopeFitter = (
  readings: readonly number[],
  repeatability: number,
) => readonly EnvelopeFit[];

/**
 * What fits lines under each sort of toe, with its weight; the first is without a toe. Of several
 * series each has its own zero, all have one elongation, and toes come back from one to the next or
 * not. All that does not hang on the readings is worked out once.
 */
export function envelopeFitter(taken: EnvelopeLoads): EnvelopeFitter {
  const { loads, series = loads.map(() => 0), known } = taken;
  const lists = designOf(taken);
  const { ones, design } = lists;
  const rows = loads.length + (known ? 1 : 0);
  const degreesOfFreedom = PRIOR_DEGREES_OF_FREEDOM + rows - design.length;
  const lengths = sortsOfToe(design.length > 2 ? SHARES : [1]).map((sorts) => {
    const toes = toesOf({ loads, series }, lists, (sorts[0] as SortOfToe).length);
    const fitters = sorts.map((sort) => {
      const { height, share } = sort;
      const variances = { own: (1 - share) * height ** 2, shared: share * height ** 2 };
      return { sort, fit: lineUnderToes(lists, toes, variances, known) };
    });
    return { toes, fitters };
  });
  return (readings, repeatability) => {
    const weighted = ones.map((one, i) => one * (readings[i] as number));
    const fits = lengths.flatMap(({ toes, fitters }) => {
      const shares = toes.sharesOf(weighted);
      return fitters.map(({ sort, fit }) =>
        fitUnder(sort, fit(weighted, shares), degreesOfFreedom, repeatability),
      );
    });
    const best = Math.max(...fits.map((fit) => fit.weight));
    const total = fits.reduce((sum, fit) => sum + Math.exp(fit.weight - best), 0);
    return fits.map((fit) => ({ ...fit, weight: Math.exp(fit.weight - best) / total }));
  };
}

/** The lines under each sort of toe, for readings that are there. */
export function envelopeFits({ readings, repeatability, ...taken }: EnvelopeData) {
  return envelopeFitter(taken)(readings, repeatability);
}
