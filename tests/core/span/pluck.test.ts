import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clampedFrequency, pinnedFrequency } from '../../../src/core/span/clamped-frequency.ts';
import { pitchFromTension, stringTension, tensionFromPitch } from '../../../src/core/span/pluck.ts';

const band = { massPerLength: 0.3, bendingStiffness: 0.8, span: 0.7 };
const allEnds = ['wheels', 'guides', 'pinned', 'clamped'] as const;

describe('the ideal string', () => {
  // OpenStax, University Physics 1, 16.3, guitar string: 0.309 g/m under 56.4 N carries waves at
  // 427.23 m/s; 5.78 g/m needs 1055 N for the same. On half a metre the note is the speed in Hz.
  const string = { bendingStiffness: 0, span: 0.5, ends: 'pinned' } as const;
  it('sounds and is tuned as the printed guitar string', () => {
    expect(pitchFromTension({ ...string, massPerLength: 0.000309 }, 56.4)).toBeCloseTo(427.23, 2);
    expect(stringTension({ span: 0.5, massPerLength: 0.00578 }, 427.23)).toBeCloseTo(1055, 1);
    const tuned = tensionFromPitch({ ...string, massPerLength: 0.00578 }, 427.23);
    expect(tuned).toBeCloseTo(stringTension({ span: 0.5, massPerLength: 0.00578 }, 427.23), 8);
  });

  it('needs four times less tension for the octave taken as the second harmonic', () =>
    expect(stringTension({ ...band, harmonic: 2 }, 100)).toBe(stringTension(band, 50)));
});

describe('pitchFromTension', () => {
  it('stays within 0.05 % of the exact note between clamps and 0.002 % between pins', () => {
    const exact = { ...band, tension: 4200 };
    const clamped = pitchFromTension({ ...band, ends: 'clamped' }, 4200);
    const pinned = pitchFromTension({ ...band, ends: 'pinned' }, 4200);
    expect(Math.abs(clamped / clampedFrequency(exact) - 1)).toBeLessThan(5e-4);
    expect(Math.abs(pinned / pinnedFrequency(exact) - 1)).toBeLessThan(2e-5);
  });

  it('by hand: 4200 N, 0.3 kg/m, 0.7 m is 84.5 Hz as a string, 0.19 % more as a strip', () => {
    const string = Math.sqrt(4200 / 0.3) / 1.4;
    const stiffer = 1 + (Math.PI ** 2 * 0.8) / (2 * 4200 * 0.49);
    expect(pitchFromTension({ ...band, ends: 'wheels' }, 4200)).toBeCloseTo(string * stiffer, 10);
  });

  it('rises from wheels over guides to clamps; wheels are as pinned', () => {
    const note = allEnds.map((ends) => pitchFromTension({ ...band, ends }, 4200));
    expect(note[0]).toBe(note[2]);
    expect(note[1]).toBeGreaterThan(note[0] as number);
    expect(note[3]).toBeGreaterThan(note[1] as number);
  });

  it('has its harmonics a little above whole multiples', () => {
    const note = (harmonic: number) =>
      pitchFromTension({ ...band, ends: 'guides', harmonic }, 4200);
    expect(note(3) / note(1)).toBeGreaterThan(3);
    expect(note(3) / note(1)).toBeLessThan(3.05);
  });
});

describe('tensionFromPitch', () => {
  it('gives back the tension that made the note, whatever the ends and the harmonic', () => {
    const tensions = fc.double({ min: 500, max: 20000, noNaN: true });
    const spans = fc.double({ min: 0.6, max: 2, noNaN: true });
    const ends = fc.constantFrom(...allEnds);
    fc.assert(
      fc.property(
        tensions,
        spans,
        ends,
        fc.integer({ min: 1, max: 2 }),
        (tension, span, end, n) => {
          const sounding = { ...band, span, ends: end, harmonic: n };
          const note = pitchFromTension(sounding, tension);
          fc.pre(note >= 10 && note <= 1000);
          expect(tensionFromPitch(sounding, note) / tension).toBeCloseTo(1, 10);
        },
      ),
    );
  });

  it.each([9.9, 1001, Number.NaN])('refuses a note of %s Hz', (frequency) =>
    expect(() => tensionFromPitch({ ...band, ends: 'wheels' }, frequency)).toThrow(
      /frequency must be between 10 and 1000 Hz/,
    ),
  );

  it('refuses a note so low that the strip would be all but slack', () =>
    expect(() => tensionFromPitch({ ...band, span: 0.2, ends: 'clamped' }, 50)).toThrow(
      /frequency must be at least \d+\.\d+ Hz \(was 50\)/,
    ));

  it('takes the very note that it names as the lowest', () => {
    const short = { ...band, span: 0.2, ends: 'clamped' } as const;
    const named = { frequency: 0 };
    try {
      tensionFromPitch(short, 50);
    } catch (error) {
      named.frequency = Number(/at least (\S+) Hz/.exec(String(error))?.[1]);
    }
    // Five times what buckles the strip, π²·EI/s².
    const lowest = 5 * 0.8 * (Math.PI / 0.2) ** 2;
    expect(tensionFromPitch(short, named.frequency) / lowest).toBeCloseTo(1, 12);
  });

  it('refuses what cannot sound', () => {
    const wheels = { ...band, ends: 'wheels' } as const;
    expect(() => pitchFromTension(wheels, 0)).toThrow('tension must be above 0 N');
    expect(() => pitchFromTension({ ...wheels, massPerLength: 0 }, 1)).toThrow(
      'massPerLength must',
    );
    expect(() => pitchFromTension({ ...wheels, span: 0 }, 1)).toThrow('span must be above 0 m');
    expect(() => pitchFromTension({ ...wheels, harmonic: 0 }, 1)).toThrow(
      'harmonic must be at least',
    );
    expect(() => pitchFromTension({ ...band, ends: 'clamped' }, 1)).toThrow(
      'held by the ends must be',
    );
  });
});
