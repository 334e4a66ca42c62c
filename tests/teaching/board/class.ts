/** A simulated class: each learner takes a series of their own at the same practice mill, and carries it to a sheet. */
import {
  type BenchLevel,
  benchLooks,
  benchMillAt,
  type LevelMill,
} from '../../../src/core/bench.ts';
import type { WorksheetDocument } from '../../../src/form/document.ts';
import { type Bench, freshBench, type Taken } from '../../../src/practice/state/bench.ts';
import { carriedDocument } from '../../../src/practice/state/carrying.ts';
import { faceOf, viewOf } from '../../../src/practice/state/view.ts';

const NAMES =
  'Ada Ben Cleo Dan Eve Finn Gus Hal Ida Jon Kai Lea Max Nia Otto Pia Quin Rosa Sam Tess Uma Vic Wim Yael Zoe';

/** 25 names. */
export const CLASS = NAMES.split(' ');

const torquesOf = ({ told }: LevelMill) =>
  Array.from({ length: 9 }, (_, at) => (told.usualTorque * (at + 2)) / 10);

/** The bench of one learner after a series. */
function workedBench(seed: number, level: BenchLevel, attempt: number): Bench {
  const mill = benchMillAt(seed, level);
  const torques = torquesOf(mill);
  const taken: Taken = { clamps: 'quick', hands: 'bare', attempt, torques, isReleased: true };
  const unit = faceOf(mill) === 'inch' ? 0.0254 : 1e-3;
  const { looks } = benchLooks(mill, taken);
  const rows = torques.map((_, at) => {
    const position = looks[at + 1]?.position as number;
    const read = position * mill.known.dialStep;
    return { series: 0, place: at + 1, dial: (read / unit).toFixed(4) };
  });
  return { ...freshBench(seed, level, 'metric'), taken: [taken], rows };
}

/** A learner's sheet, with the learner's name on it. */
export function learnersSheet(
  name: string,
  attempt: number,
  { seed = 1, level = 'clean' as BenchLevel } = {},
): WorksheetDocument {
  const document = carriedDocument(viewOf(workedBench(seed, level, attempt)));
  return { ...document, typed: { ...document.typed, label: name } };
}

/** The sheets of the whole class. */
export const classSheets = (seed = 1): readonly WorksheetDocument[] =>
  CLASS.map((name, attempt) => learnersSheet(name, attempt, { seed }));
