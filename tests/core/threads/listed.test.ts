/** The threads of the lists by their names, however those are spelled. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listedThreads, threadDesignations } from '../../../src/core/threads/list.ts';
import { thread } from '../../../src/core/threads/listed.ts';

const degree = Math.PI / 180;

describe('thread', () => {
  it('of M20 is that of ISO 724 and ISO 898-1', () => {
    const { majorDiameter, pitch, pitchDiameter, minorDiameter, stressArea, halfAngle } =
      thread('M20');
    expect([majorDiameter, pitch]).toEqual([0.02, 0.0025]);
    expect(pitchDiameter).toBeCloseTo(0.018376, 6);
    expect(minorDiameter).toBeCloseTo(0.016933, 6);
    expect(stressArea).toBeCloseTo(244.8e-6, 7);
    expect(halfAngle).toBeCloseTo(30 * degree, 15);
  });
  it.each([
    ['M20x1.5', 0.019026],
    ['3/4-10 UNC', 0.685 * 0.0254],
    ['3/4-16 UNF', 0.7094 * 0.0254],
    ['1 1/8-7 UNC', 1.0322 * 0.0254],
    ['3/4-6 Acme', 0.6667 * 0.0254],
    ['1-5 Acme', 0.9 * 0.0254],
    ['Tr20x4', 0.018],
    ['2-4.5 UNC', 1.8557 * 0.0254],
  ])('knows %s by its printed pitch diameter (ISO 724, ISO 2904, ASME B1.1 and B1.5)', (name, d2) =>
    expect(Math.abs(thread(name).pitchDiameter - d2)).toBeLessThan(2e-6),
  );
  it.each([
    ['m20', 'M20'],
    ['M 20', 'M20'],
    ['M20x2.5', 'M20'],
    ['M20 × 2.50', 'M20'],
    ['M20x2.5-6g', 'M20'],
    ['M20x01.50', 'M20x1.5'],
    ['M20x 1.5', 'M20x1.5'],
    ['M20 x1.5', 'M20x1.5'],
    ['M20×1,5', 'M20x1.5'],
    [' TR 20 X 4 ', 'Tr20x4'],
    ['3/4-10unc', '3/4-10 UNC'],
    ['3/4"-10 UNC', '3/4-10 UNC'],
    ['3/4 – 16  UNF', '3/4-16 UNF'],
    ['3/4-10 UNC-2A', '3/4-10 UNC'],
    ['1-1/8"-7 UNC', '1 1/8-7 UNC'],
    ['1 1/8 -7 UNC', '1 1/8-7 UNC'],
    ['acme 1-5', '1-5 Acme'],
    ['1-5Acme', '1-5 Acme'],
    ['1 1/4-5 ACME-2G', '1 1/4-5 Acme'],
  ])('reads %s as %s', (typed, meant) => expect(thread(typed)).toEqual(thread(meant)));
  it('reads every name of the lists, in small and in capital letters', () =>
    fc.assert(
      fc.property(fc.constantFrom(...threadDesignations), (name) => {
        expect(thread(name.toUpperCase())).toEqual(thread(name.toLowerCase()));
        expect(thread(name).majorDiameter).toBe(
          listedThreads.find(({ designation }) => designation === name)?.majorDiameter,
        );
      }),
    ));
  it('reads every coarse metric thread with its pitch spelled out', () => {
    const coarse = listedThreads.filter(({ designation }) => /^M\d+$/.test(designation));
    expect(coarse.length).toBeGreaterThan(15);
    for (const { designation, pitch } of coarse) {
      const full = `${designation}x${Number((pitch * 1000).toFixed(3))}`;
      expect(thread(full)).toEqual(thread(designation));
    }
  });
  it('refuses a pitch that is not listed and names those that are', () =>
    expect(() => thread('M20x9')).toThrow(
      new RangeError(
        'designation must be a listed thread, such as M20, M20x2, M20x1.5, M20x1 (was M20x9)',
      ),
    ));
  it.each(['3/4-10 UNC', '3/4-16 UNF', '1-5 Acme'])('knows %s without its family', (name) =>
    expect(thread(name.split(' ')[0] ?? '')).toEqual(thread(name)),
  );
  it('refuses an inch thread that is none of any family, and names those of its diameter', () =>
    expect(() => thread('3/4-11')).toThrow(/such as 3\/4-10 UNC, 3\/4-16 UNF, 3\/4-6 Acme \(was/));
  it('names those of its diameter though the pitch is garbled', () =>
    expect(() => thread('3/4-1/10 UNC')).toThrow(
      /such as 3\/4-10 UNC, 3\/4-16 UNF, 3\/4-6 Acme \(/,
    ));
  it.each(['handle', '1-13/16-8 UN'])(
    'names one of each family where none has the diameter: %s',
    (typed) =>
      expect(() => thread(typed)).toThrow(
        new RangeError(
          `designation must be a listed thread, such as M20, M20x1.5, 3/4-10 UNC, 3/4-16 UNF, 3/4-6 Acme or Tr20x4 (was ${typed})`,
        ),
      ),
  );
  it.each(['', 'handle', 'M', 'Tr21x4', '3/4-11 UNC', '1 UNC 1/8-7', '__proto__'])(
    'refuses "%s"',
    (name) => expect(() => thread(name)).toThrow(/^designation must be a listed thread, such as/),
  );
  it('refuses a text of any length, quoting only its start', () =>
    expect(() => thread(' x'.repeat(1e6))).toThrow(/\(was ( x){20}\)$/));
});
