import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetPress } from '../../../../src/core/worksheet/second/press.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { derivedOf } from '../fixtures/derived-of.ts';
import { millA, worksheetMills } from '../fixtures/mills.ts';

const pressed = (letter: string, mill: Worksheet, deflection = 0.005): Worksheet => ({
  ...mill,
  second: {
    ...mill.second,
    span: derivedOf(letter, 's free strand (m)'),
    force: derivedOf(letter, 'side force for 5 mm, free strand (N)'),
    deflection,
  },
});

describe('the stress by pressing', () => {
  it.each(Object.entries(worksheetMills))('of mill %s is its target', (letter, mill) => {
    const { value, expandedUncertainty } = numbersOf(worksheetPress(pressed(letter, mill)));
    const target = 1e6 * derivedOf(letter, 'target sigma (MPa)');
    expect(value / target).toBeCloseTo(1, 1);
    expect(Math.abs(value - target)).toBeLessThan(expandedUncertainty);
  });

  it('hangs most on how far it yields and on the section', () => {
    const { contributions } = numbersOf(worksheetPress(pressed('A', millA)));
    expect(contributions[0]?.name).toBe('deflection');
  });

  it('is a little more where the stretch of the push is not known', () => {
    const mill = { ...millA.mill, centreDistance: undefined };
    const without = numbersOf(worksheetPress(pressed('A', { ...millA, mill }))).value;
    const own = numbersOf(worksheetPress(pressed('A', millA))).value;
    expect(without).toBeGreaterThan(own);
    expect(without / own).toBeLessThan(1.03);
  });

  it('refuses a push that a slack band would take', () =>
    expect(refusalOf(worksheetPress(pressed('A', millA, 0.06)))).toBe('pressTooSoft'));

  it('waits for push, yield and span', () =>
    expect(worksheetPress(millA)).toEqual({
      ready: false,
      waitsFor: ['second.force', 'second.deflection', 'second.span'],
    }));
});
