/** The examples of what may be typed say where the switch has to stand, and only where it matters. */
import { describe, expect, it } from 'vitest';
import { typedExamples } from '../../../src/components/reference/typed-examples.ts';

const switches = new Map(typedExamples().map(({ text, switchAt }) => [text, switchAt]));

describe('typed examples', () => {
  it('without a unit are read by the switch', () => {
    expect(switches.get('27.1')).toBe('metric');
    expect(switches.get('.042')).toBe('us');
  });

  it('with a unit, and of what has but one unit, are read alike', () =>
    expect(['17 ksi', "12' 6", '1 1/4'].map((text) => switches.get(text))).toEqual([
      'any',
      'any',
      'any',
    ]));

  it('that are refused are refused alike', () =>
    expect(['1,200', '20 lb', '0.5'].map((text) => switches.get(text))).toEqual([
      'any',
      'any',
      'any',
    ]));

  it('show all three stands of the switch', () =>
    expect(new Set(switches.values())).toEqual(new Set(['metric', 'us', 'any'])));
});
