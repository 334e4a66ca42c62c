/**
 * The note of the plucked strand. Apart from what else is tried, for it comes when it is first wanted.
 * Units: SI only (Pa, Hz, m).
 * Source: the note, span/pluck.ts; how well an ear repeats, common practice, no source.
 */
import { bandSteel } from '../assumptions.ts';
import { sectionArea } from '../section.ts';
import { lowestNote, massPerLength, massRatio, pitchFromStress } from '../span.ts';
import type { LevelMill } from './levels.ts';
import { chancesOf } from './trying.ts';

const NOTE_SCATTER = 0.004; // of a note, standard deviation
const NOTE_STEPS = 10; // in a Hz, to which a note is read

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
  const { normal } = chancesOf(mill, 'pluck', pluck);
  const strand = strandOf(mill);
  const scatter = 1 + NOTE_SCATTER * normal();
  const note = stress > 0 ? pitchFromStress({ ...strand, stress }) : 0;
  if (note < lowestNote(strand)) return undefined;
  return Math.round(note * scatter * NOTE_STEPS) / NOTE_STEPS;
}
