/**
 * Whether the note that was heard is the one that was meant.
 * Units: N; ratios have none.
 * Source: derived here: tension goes as the square of the note, so a harmonic n gives n² of it. The
 * width of 15 % is our choice.
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
