import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likelyHarmonic } from '../../../src/core/span/heard-note.ts';

describe('likelyHarmonic', () => {
  it('knows an octave by its four times, by hand: 12 kN heard where 3.1 kN was measured', () =>
    expect(likelyHarmonic(12000, 3100)).toBe(2));

  it.each([2, 3, 1 / 2, 1 / 3])(
    'finds harmonic %s within 15 %% of its square, not beyond',
    (harmonic) =>
      fc.assert(
        fc.property(fc.double({ min: 100, max: 1e5, noNaN: true }), (tension) => {
          const heard = tension * harmonic ** 2;
          expect(likelyHarmonic(heard, tension)).toBe(harmonic);
          expect(likelyHarmonic(heard * 1.149, tension)).toBe(harmonic);
          expect(likelyHarmonic(heard * 0.851, tension)).toBe(harmonic);
          expect(likelyHarmonic(heard * 1.151, tension)).toBeUndefined();
          expect(likelyHarmonic(heard * 0.849, tension)).toBeUndefined();
        }),
      ),
  );

  it('is none where the two agree', () => expect(likelyHarmonic(3000, 3100)).toBeUndefined());

  it('refuses a tension of 0', () => {
    expect(() => likelyHarmonic(0, 1)).toThrow('fromPitch must be above 0 N');
    expect(() => likelyHarmonic(1, 0)).toThrow('elsewhere must be above 0 N');
  });
});
