/**
 * The practice bench: a mill drawn from a seed, plain or at a level, what can be done at it, and what is under its lid.
 * Units: SI only (m, N·m, Pa, Hz; turns have no unit).
 * Source: see the files of bench/.
 */
export type { Cause, Line, Stage } from './bench/costs.ts';
export { type Handling, minutesOf } from './bench/handling.ts';
export { type BenchLevel, benchLevels, benchMillAt, type LevelMill } from './bench/levels.ts';
export { type Lifted, liftedLid } from './bench/lid.ts';
export {
  type BenchLook,
  type BenchLooks,
  benchLooks,
  stepsPerTurn,
  type TakenSeries,
} from './bench/looks.ts';
export { type BenchMill, benchMill } from './bench/mill.ts';
export { type Believed, type NotedRow, notedStress } from './bench/noted.ts';
export type { HeardNote, Plucked } from './bench/plucked.ts';
export { pluckedNote } from './bench/plucking.ts';
export {
  type BenchReading,
  type BenchSeries,
  benchEfficiency,
  benchSeries,
  benchStress,
  coilSetLeft,
  straightensBack,
} from './bench/series.ts';
export { turnsSlack } from './bench/trying.ts';
export type { Slip } from './bench/working-out.ts';
export type { Done, WrongRow } from './bench/wrong-rows.ts';
