import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clampedFrequency,
  clampedFrequencyFletcher,
  clampedFrequencySeries,
  pinnedFrequency,
} from '../../../src/core/span/clamped-frequency.ts';

const string = { tension: 4200, massPerLength: 0.3, bendingStiffness: 0.8, span: 0.7 };
const all = { clampedFrequency, clampedFrequencyFletcher, clampedFrequencySeries, pinnedFrequency };

/**
 * Note between clamps of 1 N, 1 kg/m and 1 m. The shape about the middle is A·cosh(ax) + B·cos(bx),
 * or the same with sinh and sin; ends that are still and level ask a·tanh(a/2) = −b·tan(b/2), or
 * a·tan(b/2) = b·tanh(a/2): derived here.
 */
function noteBySymmetry(harmonic: number, stiffness: number): number {
  const along = (b: number) => Math.sqrt(b * b + 1 / stiffness);
  const ends = (b: number) => {
    const [hyperbolic, circular] = [Math.tanh(along(b) / 2), Math.tan(b / 2)];
    return harmonic === 1
      ? along(b) * hyperbolic + b * circular
      : along(b) * circular - b * hyperbolic;
  };
  // Both rise from below 0: from the pole of the tangent at π, or from its zero at 2π.
  let [low, high] = [harmonic * Math.PI * (1 + 1e-12), (harmonic + 0.9) * Math.PI];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (ends(middle) < 0) low = middle;
    else high = middle;
  }
  return (along(low) * low * Math.sqrt(stiffness)) / (2 * Math.PI);
}

describe('notes of a stiff string', () => {
  // Fletcher, J. Acoust. Soc. Am. 36 (1964) 203, from memory: n·f₀√(1 + Bn²), between clamps times
  // 1 + (2/π)√B + (4/π²)B. Values computed from these for EI/(T·s²) = 1e-4.
  it.each([
    [1, 1.0004933585187405, 1.0209034230325227, 1.0209145059985987],
    [2, 1.0019719765344917, 1.0224122048557953, 1.0224318875918306],
    [3, 1.0044315028716395, 1.024921905530221, 1.024955396800726],
  ])('match the series and the exact roots, harmonic %s', (harmonic, pinned, series, exact) => {
    const stiff = { tension: 1, massPerLength: 1, bendingStiffness: 1e-4, span: 1, harmonic };
    const ratio = (note: number) => note / (harmonic / 2);
    expect(ratio(pinnedFrequency(stiff))).toBeCloseTo(pinned, 12);
    expect(ratio(clampedFrequencyFletcher(stiff))).toBeCloseTo(series, 12);
    expect(ratio(clampedFrequency(stiff))).toBeCloseTo(exact, 12);
  });

  // Rao, Mechanical Vibrations, 8.5, from memory: β·s = 4.730041, 7.853205 and 10.995608 for a
  // clamped beam without pull.
  it.each([
    [1, 4.730041],
    [2, 7.853205],
    [3, 10.995608],
  ])('end at the clamped beam, harmonic %s', (harmonic, root) => {
    const beam = { tension: 1e-7, massPerLength: 1, bendingStiffness: 1, span: 1, harmonic };
    expect(Math.sqrt(2 * Math.PI * clampedFrequency(beam))).toBeCloseTo(root, 5);
  });

  it.each([
    [1, 10],
    [1, 0.1],
    [2, 10],
    [2, 0.1],
  ])('match the roots of each symmetry, harmonic %s, stiffness %s', (harmonic, stiffness) => {
    const sizes = { tension: 1, massPerLength: 1, bendingStiffness: stiffness, span: 1 };
    const note = noteBySymmetry(harmonic, stiffness);
    expect(clampedFrequency({ ...sizes, harmonic }) / note).toBeCloseTo(1, 11);
  });

  it('all end at the string', () => {
    const bare = { ...string, bendingStiffness: 1e-14 };
    for (const note of Object.values(all))
      expect(note(bare)).toBeCloseTo(Math.sqrt(4200 / 0.3) / 1.4, 4);
  });

  it('part by third order only: twice the end length, eight times the difference', () => {
    const ends = fc.double({ min: 0.002, max: 0.01, noNaN: true });
    fc.assert(
      fc.property(ends, (end) => {
        const part = (length: number) => {
          const stiff = { ...string, span: 1, bendingStiffness: 4200 * length ** 2 };
          return clampedFrequency(stiff) - clampedFrequencySeries(stiff);
        };
        expect(part(2 * end) / part(end)).toBeGreaterThan(7);
        expect(part(2 * end) / part(end)).toBeLessThan(9);
      }),
    );
  });

  it.each(Object.entries(all))('%s refuses what cannot sound', (_name, note) => {
    for (const name of ['tension', 'massPerLength', 'bendingStiffness', 'span'])
      expect(() => note({ ...string, [name]: 0 })).toThrow(`${name} must be above 0`);
    expect(() => note({ ...string, harmonic: 1.5 })).toThrow('harmonic must be a whole number');
  });
});
