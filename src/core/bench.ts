/**
 * The practice bench: a mill drawn from a seed, plain or at a level, and what can be done at it.
 * Units: SI only (m, N·m, Pa, Hz; turns have no unit).
 * Source: see the files of bench/.
 */
export { type BenchMill, benchMill } from './bench/mill.ts';
export { type BenchReading, type BenchSeries, benchSeries, benchStress } from './bench/series.ts';
