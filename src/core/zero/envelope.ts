/**
 * A straight line through readings that start in a toe of unknown shape: the toe is any smooth
 * curve inside an envelope that dies with load, of 31 sorts, each fitted and weighed by evidence.
 * Units: load as a share of the top load; readings and what follows from them in m.
 * Source: Gaussian-process regression with explicit basis functions, Rasmussen and Williams (2006),
 * 2.7, from memory; the sorts and their weights are derived here and tested by simulation.
 */
import { type Lists, lineUnderToes, type Toes, toesOf } from './toes.ts';

const LENGTHS = [0.03, 0.05, 0.08, 0.13, 0.2, 0.3]; // share of the top load over which a toe dies
const HEIGHTS = [1, 3, 10, 30, 100]; // height of a toe in repeatabilities
const NO_TOE = { length: 1, height: 0 }; // without height the length is idle
const PRIOR_NO_TOE = 0.15;
const PRIOR_DEGREES_OF_FREEDOM = 2; // worth of the repeatability, against that of the residuals

/** Readings against load; all lists (n). `variances` are in squares of the repeatability. */
export interface EnvelopeData {
  readonly loads: readonly number[]; // share of the top load
  readonly readings: readonly number[]; // m
  readonly repeatability: number; // m, > 0
  readonly variances: readonly number[];
}

/** One sort of toe with its line; the parameters follow Student's distribution about their values. */
export interface EnvelopeFit {
  readonly length: number; // share of the top load
  readonly height: number; // in repeatabilities; 0 without a toe
  readonly weight: number; // all weights add up to 1
  readonly zero: number; // m, at no load
  readonly scaleZero: number; // m
  readonly elongation: number; // m, from no load to the top load
  readonly scaleElongation: number; // m
  readonly degreesOfFreedom: number;
  readonly toe: Float64Array; // m, one for each reading
}

/** One sort of toe with what is believed of it beforehand. */
interface SortOfToe {
  readonly length: number;
  readonly height: number;
  readonly prior: number;
}

/** The line under one sort of toe; `weight` is still the logarithm of the evidence. */
function fitUnder(
  repeatability: number,
  lists: Lists,
  toes: Toes,
  { prior, ...sort }: SortOfToe,
): EnvelopeFit {
  const line = lineUnderToes(lists, toes, sort.height);
  const degreesOfFreedom = PRIOR_DEGREES_OF_FREEDOM + lists.ones.length - 2;
  const squares = PRIOR_DEGREES_OF_FREEDOM * repeatability ** 2 + line.squares;
  const variance = squares / degreesOfFreedom / line.determinant;
  const spread = line.logDeterminant + Math.log(line.determinant);
  return {
    ...sort,
    weight: Math.log(prior) - spread / 2 - (degreesOfFreedom / 2) * Math.log(squares),
    zero: line.zero,
    scaleZero: Math.sqrt(variance * line.b11),
    elongation: line.elongation,
    scaleElongation: Math.sqrt(variance * line.b00),
    degreesOfFreedom,
    toe: line.toe,
  };
}

/** The line under each of the 31 sorts of toe, with its weight; the first is without a toe. */
export function envelopeFits({
  loads,
  readings,
  repeatability,
  variances,
}: EnvelopeData): readonly EnvelopeFit[] {
  const ones = Float64Array.from(variances, (variance) => 1 / Math.sqrt(variance));
  const over = (list: readonly number[]) => ones.map((one, i) => one * (list[i] as number));
  const lists = { ones, loads: over(loads), readings: over(readings) };
  const prior = (1 - PRIOR_NO_TOE) / (LENGTHS.length * HEIGHTS.length);
  const fitsOf = (length: number, heights: readonly number[], prior: number) => {
    const toes = toesOf(loads, lists, length);
    return heights.map((height) => fitUnder(repeatability, lists, toes, { length, height, prior }));
  };
  const fits = [
    ...fitsOf(NO_TOE.length, [NO_TOE.height], PRIOR_NO_TOE),
    ...LENGTHS.flatMap((length) => fitsOf(length, HEIGHTS, prior)),
  ];
  const best = Math.max(...fits.map((fit) => fit.weight));
  const total = fits.reduce((sum, fit) => sum + Math.exp(fit.weight - best), 0);
  return fits.map((fit) => ({ ...fit, weight: Math.exp(fit.weight - best) / total }));
}
