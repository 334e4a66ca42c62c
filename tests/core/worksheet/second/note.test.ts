import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetNote } from '../../../../src/core/worksheet/second/note.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { derivedOf } from '../fixtures/derived-of.ts';
import { millA, worksheetMills } from '../fixtures/mills.ts';

const heard = (mill: Worksheet, second: Partial<Worksheet['second']>): Worksheet => ({
  ...mill,
  second: { ...mill.second, ...second },
});

const atTarget = (letter: string, mill: Worksheet) =>
  heard(mill, {
    span: derivedOf(letter, 's free strand (m)'),
    note: derivedOf(letter, 'pitch, free strand wheel to wheel (Hz)'),
  });

describe('the stress by the note', () => {
  it.each(Object.entries(worksheetMills))(
    'of mill %s is its target, wheel to wheel',
    (letter, mill) => {
      const { value, expandedUncertainty } = numbersOf(worksheetNote(atTarget(letter, mill)));
      const target = 1e6 * derivedOf(letter, 'target sigma (MPa)');
      expect(value / target).toBeCloseTo(1, 1);
      expect(Math.abs(value - target)).toBeLessThan(expandedUncertainty);
      expect(expandedUncertainty / target).toBeLessThan(0.06);
    },
  );

  it('hangs on the note and the span, hardly on the section', () => {
    const { contributions } = numbersOf(worksheetNote(atTarget('A', millA)));
    expect(contributions.map(({ name }) => name).slice(0, 2)).toContain('note');
    const wide = { ...millA.band, bodyWidth: 0.0255, widthOverTeeth: undefined };
    const own = numbersOf(worksheetNote(atTarget('A', millA))).value;
    const wider = numbersOf(worksheetNote(atTarget('A', { ...millA, band: wide }))).value;
    expect(wider / own).toBeCloseTo(1, 1);
  });

  it('knows the octave as a harmonic', () => {
    const { span, note = Number.NaN } = atTarget('A', millA).second;
    const [first, second] = [
      heard(millA, { span, note }),
      heard(millA, { span, note: 2 * note, harmonic: 2 }),
    ];
    const ratio = numbersOf(worksheetNote(second)).value / numbersOf(worksheetNote(first)).value;
    expect(ratio).toBeCloseTo(1, 2);
  });

  it('is less between guides, whose ends shorten what sounds', () => {
    const asked = { span: 0.55, note: derivedOf('A', 'pitch, guide span pinned (Hz)') };
    const wheels = numbersOf(worksheetNote(heard(millA, { ...asked, ends: 'wheels' }))).value;
    const guides = numbersOf(worksheetNote(heard(millA, { ...asked, ends: 'guides' }))).value;
    expect(wheels / 110e6).toBeCloseTo(1.007, 2); // the air that rides along
    expect(guides).toBeLessThan(wheels);
  });

  it('is known less well where the teeth are not', () => {
    const band = { ...millA.band, widthOverTeeth: undefined };
    const without = numbersOf(worksheetNote(atTarget('A', { ...millA, band })));
    const own = numbersOf(worksheetNote(atTarget('A', millA)));
    expect(without.standardUncertainty).toBeGreaterThan(own.standardUncertainty);
  });

  it.each([
    { note: 5, span: 1.35 },
    { note: 980, span: 1.35 },
    { note: 15, span: 0.3 },
  ])('refuses $note Hz on $span m', (second) =>
    expect(refusalOf(worksheetNote(heard(millA, second)))).toBe('noteOutOfReach'),
  );

  it('waits for note and span', () =>
    expect(worksheetNote(millA)).toEqual({
      ready: false,
      waitsFor: ['second.note', 'second.span'],
    }));
});
