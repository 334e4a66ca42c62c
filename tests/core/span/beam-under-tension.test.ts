import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  edgewiseBendingStiffness,
  endLength,
  flatBendingStiffness,
  lateralStiffness,
  lateralStiffnessClamped,
  lateralStiffnessGuided,
  lateralStiffnessPinned,
} from '../../../src/core/span/beam-under-tension.ts';

const strip = { youngsModulus: 205e9, width: 0.032, thickness: 0.0009 };
const beam = { tension: 4000, bendingStiffness: 0.39852, span: 0.6 };
const each = [lateralStiffnessPinned, lateralStiffnessGuided, lateralStiffnessClamped];

describe('bending stiffness and end length', () => {
  it('are 0.398520 and 503.8 N·m² for 32 mm by 0.9 mm, by hand: E·b·h³/12', () => {
    expect(flatBendingStiffness(strip)).toBeCloseTo((205e9 * 0.032 * 0.0009 ** 3) / 12, 12);
    expect(edgewiseBendingStiffness(strip)).toBeCloseTo((205e9 * 0.0009 * 0.032 ** 3) / 12, 9);
  });

  it('give an end length of 1 cm for 0.4 N·m² under 4000 N', () =>
    expect(endLength({ tension: 4000, bendingStiffness: 0.4 })).toBeCloseTo(0.01, 12));

  it.each(['youngsModulus', 'width', 'thickness'])('refuse %s of 0', (name) => {
    const none = { ...strip, [name]: 0 };
    expect(() => flatBendingStiffness(none)).toThrow(`${name} must be above 0`);
    expect(() => edgewiseBendingStiffness(none)).toThrow(`${name} must be above 0`);
  });
});

describe('lateral stiffness', () => {
  // Timoshenko, Strength of Materials, part II: a tie rod of 50 mm by 12 mm, 1.2 m long, pulled by
  // 1 kN and loaded by 50 N at the middle; deflections computed from the printed formulas.
  it('matches the tie rod, where bending and pull share the load', () => {
    const rod = { youngsModulus: 205e9, width: 0.05, thickness: 0.012 };
    const tie = { tension: 1000, bendingStiffness: flatBendingStiffness(rod), span: 1.2 };
    expect(50 / lateralStiffnessPinned(tie)).toBeCloseTo(0.0011112246037750244, 14);
    expect(50 / lateralStiffnessClamped(tie)).toBeCloseTo(0.00029762109961350687, 15);
  });

  it('is 48 and 192 EI/s³ for a beam that is hardly pulled, 4T/s for a string', () => {
    const slack = { tension: 1e-3, bendingStiffness: 100, span: 1 };
    expect(lateralStiffnessPinned(slack)).toBeCloseTo(4800, 1);
    expect(lateralStiffnessGuided(slack)).toBeCloseTo(4800 * 1.002, -1);
    expect(lateralStiffnessClamped(slack)).toBeCloseTo(19200, 1);
    const string = { tension: 3000, bendingStiffness: 0, span: 0.6 };
    for (const stiffness of each) expect(stiffness(string)).toBe(20000);
  });

  // A long span loses to its ends two, three or four end lengths of its sag.
  it('of a span on guides is half-way between pinned and clamped where the span is long', () => {
    const lost = each.map((stiffness) => beam.span - (4 * beam.tension) / stiffness(beam));
    const lengths = lost.map((length) => length / endLength(beam));
    [2, 3, 4].forEach((count, i) => {
      expect(lengths[i]).toBeCloseTo(count, 9);
    });
  });

  it('rises from pinned over guides to clamped, and with the tension', () => {
    const tensions = fc.double({ min: 100, max: 20000, noNaN: true });
    fc.assert(
      fc.property(tensions, fc.double({ min: 0.1, max: 2, noNaN: true }), (tension, span) => {
        const one = { ...beam, tension, span };
        const [pinned, guided, clamped] = each.map((stiffness) => stiffness(one));
        expect(pinned).toBeLessThan(guided as number);
        expect(guided).toBeLessThan(clamped as number);
        for (const stiffness of each)
          expect(stiffness({ ...one, tension: tension * 1.01 })).toBeGreaterThan(stiffness(one));
      }),
    );
  });

  it('takes wheels as pinned at their tangent points', () => {
    expect(lateralStiffness(beam, 'wheels')).toBe(lateralStiffnessPinned(beam));
    expect(lateralStiffness(beam, 'pinned')).toBe(lateralStiffnessPinned(beam));
    expect(lateralStiffness(beam, 'guides')).toBe(lateralStiffnessGuided(beam));
    expect(lateralStiffness(beam, 'clamped')).toBe(lateralStiffnessClamped(beam));
  });

  it('refuses a slack, a weightless and an endless beam', () => {
    expect(() => lateralStiffnessPinned({ ...beam, tension: 0 })).toThrow(
      'tension must be above 0 N',
    );
    expect(() => lateralStiffnessClamped({ ...beam, bendingStiffness: -1 })).toThrow(
      'at least 0 N·m²',
    );
    expect(() => lateralStiffnessGuided({ ...beam, span: Number.NaN })).toThrow(
      'span must be above',
    );
  });
});
