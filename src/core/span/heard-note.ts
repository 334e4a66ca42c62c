/**
 * Whether the note that was heard is the one that was meant.
 * Units: N and Hz; ratios have none.
 * Source: derived here: tension goes as the square of the note, so a harmonic n gives n² of it. The
 * widths of 15 % and of a twentieth are our choice: of the invented mills' twisting notes all lie
 * outside it; on a guide span under a quarter of a metre a stiff strip's own octave may, too.
 */
import { assertPositive } from '../assert.ts';

const harmonics = [2, 3, 1 / 2, 1 / 3];

/**
 * Harmonic that explains a tension from pitch of 4, 9, 1/4 or 1/9 of the tension known otherwise,
 * to 15 %: 2, 3, 1/2 or 1/3; undefined where none does.
 * @throws RangeError unless both are above 0
 */
export function likelyHarmonic(fromPitch: number, elsewhere: number): number | undefined {
  assertPositive('fromPitch', fromPitch, 'N');
  assertPositive('elsewhere', elsewhere, 'N');
  const ratio = fromPitch / elsewhere;
  return harmonics.find((harmonic) => Math.abs(ratio / harmonic ** 2 - 1) <= 0.15);
}

/**
 * Whether two notes could not belong to one series, their ratio being no whole number to a
 * twentieth: then one of them may be the twisting note.
 * @throws RangeError unless both are above 0 Hz
 */
export function isForeignNote(note: number, other: number): boolean {
  assertPositive('note', note, 'Hz');
  assertPositive('other', other, 'Hz');
  const ratio = Math.max(note, other) / Math.min(note, other);
  return Math.abs(ratio - Math.round(ratio)) > 0.05;
}
