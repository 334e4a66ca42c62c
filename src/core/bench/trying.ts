/**
 * What can be tried at the bench beside the dial: the handle on a slack band, and the note of the plucked strand.
 * Units: SI only (N·m, Pa, Hz, m).
 * Source: the note, span/pluck.ts; how well a wrench and an ear repeat, common practice, no source.
 */
import { assertPositive, assertWhole } from '../assert.ts';
import { bandSteel } from '../assumptions.ts';
import { randomSource } from '../random.ts';
import { sectionArea } from '../section.ts';
import { lowestNote, massPerLength, massRatio, pitchFromStress } from '../span.ts';
import type { LevelMill } from './levels.ts';

const TRY_SEEDS = 2 ** 52 + 2 ** 34; // beyond those of every series and level
const TRIES = 500_000; // of each kind at a mill
const NOTE_SCATTER = 0.004; // of a note, standard deviation
const NOTE_STEPS = 10; // in a Hz, to which a note is read

/** The chances of the try of that number at a mill. */
function chancesOf({ seed }: LevelMill, name: string, number: number, from: number) {
  assertWhole(name, number, 0, TRIES - 1);
  return randomSource(TRY_SEEDS + 2 * TRIES * seed + from + number);
}

/**
 * Whether a torque turns the handle while the band is slack.
 * @throws RangeError unless torque is above 0 N·m and the number of the try 0 to 499 999
 */
export function turnsSlack(mill: LevelMill, torque: number, attempt: number): boolean {
  assertPositive('torque', torque, 'N·m');
  const { normal } = chancesOf(mill, 'attempt', attempt, 0);
  return torque * (1 + mill.hidden.torqueScatter * normal()) > mill.hidden.dragTorque;
}

/** The strand between the wheels, as it sounds. */
function strandOf({ known, hidden, told }: LevelMill) {
  const { bodyWidth, thickness, centreDistance: span } = known;
  const { density } = bandSteel;
  const widthOverTeeth = bodyWidth + told.teeth;
  const mass = massPerLength({ density, widthOverTeeth, bodyWidth, thickness });
  const area = sectionArea({ width: bodyWidth, thickness });
  const { youngsModulus } = hidden;
  const ends = 'wheels' as const;
  const ratio = massRatio(mass, density, area);
  return { span, density, thickness, youngsModulus, ends, massRatio: ratio };
}

/**
 * The note of the strand between the wheels as it is heard, Hz to a tenth; undefined where the band is too slack to sing.
 * @throws RangeError unless the number of the pluck is 0 to 499 999
 */
export function pluckedNote(mill: LevelMill, stress: number, pluck: number): number | undefined {
  const { normal } = chancesOf(mill, 'pluck', pluck, TRIES);
  const strand = strandOf(mill);
  const scatter = 1 + NOTE_SCATTER * normal();
  const note = stress > 0 ? pitchFromStress({ ...strand, stress }) : 0;
  if (note < lowestNote(strand)) return undefined;
  return Math.round(note * scatter * NOTE_STEPS) / NOTE_STEPS;
}
