/**
 * A straight line through readings that start in a toe of unknown shape: the toe is any smooth
 * curve inside an envelope that dies with load, of 31 sorts, each fitted and weighed by evidence.
 * Several series are joined with three times as many sorts, as their toes may be alike or not.
 * Units: load as a share of the top load; readings and what follows from them in m.
 * Source: Gaussian-process regression with explicit basis functions, Rasmussen and Williams (2006),
 * 2.7, from memory; the sorts and their weights are derived here and tested by simulation.
 */
import { type KnownElongation, lineUnderToes } from './line-under-toes.ts';
import { type Lists, type Toes, toesOf } from './toes.ts';

const LENGTHS = [0.03, 0.05, 0.08, 0.13, 0.2, 0.3]; // share of the top load over which a toe dies
const HEIGHTS = [1, 3, 10, 30, 100]; // height of a toe in repeatabilities
const NO_TOE = { length: 1, height: 0 }; // without height the length is idle
const SHARES = [0, 0.5, 1]; // of a toe that comes back in the next series of several
const PRIOR_NO_TOE = 0.15;
const PRIOR_DEGREES_OF_FREEDOM = 2; // worth of the repeatability, against that of the residuals

/** Readings against load; all lists (n). `variances` are in squares of the repeatability. */
export interface EnvelopeData {
  readonly loads: readonly number[]; // share of the top load
  readonly readings: readonly number[]; // m
  readonly repeatability: number; // m, > 0
  readonly variances: readonly number[];
  readonly series?: readonly number[]; // of each reading, counted from 0 without a gap; one if not said
  readonly known?: KnownElongation | undefined; // of the elongation, from elsewhere
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
  { repeatability, known }: EnvelopeData,
  lists: Lists,
  toes: Toes,
  { prior, ...sort }: SortOfToe,
): EnvelopeFit {
  const { height, share } = sort;
  const variances = { own: (1 - share) * height ** 2, shared: share * height ** 2 };
  const line = lineUnderToes(lists, toes, variances, known);
  const series = lists.design.length - 1;
  const rows = lists.ones.length + (known ? 1 : 0);
  const degreesOfFreedom = PRIOR_DEGREES_OF_FREEDOM + rows - lists.design.length;
  const squares = PRIOR_DEGREES_OF_FREEDOM * repeatability ** 2 + line.squares;
  const scales = Array.from(line.variances, (variance) =>
    Math.sqrt((squares / degreesOfFreedom) * variance),
  );
  const spread = line.logDeterminant + line.logInformation;
  return {
    ...sort,
    weight: Math.log(prior) - spread / 2 - (degreesOfFreedom / 2) * Math.log(squares),
    zeros: Array.from(line.parameters.subarray(0, series)),
    scaleZeros: scales.slice(0, series),
    elongation: line.parameters[series] as number,
    scaleElongation: scales[series] as number,
    degreesOfFreedom,
    toe: line.toe,
  };
}

/** The readings over their standard deviations, with a column for each series and one for the loads. */
function weightedLists({ loads, readings, variances, series = [] }: EnvelopeData): Lists {
  const ones = Float64Array.from(variances, (variance) => 1 / Math.sqrt(variance));
  const over = (list: readonly number[]) => ones.map((one, i) => one * (list[i] as number));
  const starts = Array.from({ length: Math.max(0, ...series) + 1 }, (_, place) =>
    ones.map((one, i) => ((series[i] ?? 0) === place ? one : 0)),
  );
  return { ones, design: [...starts, over(loads)], readings: over(readings) };
}

/**
 * The lines under each sort of toe, with its weight; the first is without a toe. Of several series
 * each has its own zero, all have one elongation, and toes come back from one to the next or not.
 */
export function envelopeFits(data: EnvelopeData): readonly EnvelopeFit[] {
  const lists = weightedLists(data);
  const { loads, series = loads.map(() => 0) } = data;
  const shares = lists.design.length > 2 ? SHARES : [1];
  const prior = (1 - PRIOR_NO_TOE) / (LENGTHS.length * HEIGHTS.length * shares.length);
  const fitsOf = (length: number, sorts: readonly Omit<SortOfToe, 'length'>[]) => {
    const toes = toesOf({ loads, series }, lists, length);
    return sorts.map((sort) => fitUnder(data, lists, toes, { length, ...sort }));
  };
  const sorts = shares.flatMap((share) => HEIGHTS.map((height) => ({ height, share, prior })));
  const fits = [
    ...fitsOf(NO_TOE.length, [{ height: NO_TOE.height, share: 1, prior: PRIOR_NO_TOE }]),
    ...LENGTHS.flatMap((length) => fitsOf(length, sorts)),
  ];
  const best = Math.max(...fits.map((fit) => fit.weight));
  const total = fits.reduce((sum, fit) => sum + Math.exp(fit.weight - best), 0);
  return fits.map((fit) => ({ ...fit, weight: Math.exp(fit.weight - best) / total }));
}
