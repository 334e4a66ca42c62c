/** The link to a set of sheets: whole there and back, and hostile where it comes from outside. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  choicesIn,
  fragmentOf,
  LIMITS,
  PARTS,
  type SheetChoices,
  startingChoices,
} from '../../../src/teaching/sheets/choices.ts';
import { createSheetState, takeLink, tickLesson } from '../../../src/teaching/sheets/state.ts';

const ALL = ['one', 'two', 'three', 'four', 'five'];
const start = startingChoices(ALL, 'metric');
const read = (fragment: string) => choicesIn(fragment, start, ALL);

const whole = ({ least, most }: { least: number; most: number }) =>
  fc.integer({ min: least, max: most });
const anyChoices: fc.Arbitrary<SheetChoices> = fc.record({
  seed: whole(LIMITS.seed),
  lessons: fc.subarray(ALL, { minLength: 1 }),
  questions: whole(LIMITS.questions),
  variants: whole(LIMITS.variants),
  units: fc.constantFrom('metric', 'us'),
  perPage: fc.constantFrom('1', '2'),
  print: fc.constantFrom(...PARTS),
});

describe('the link to a set of sheets', () => {
  it('brings back what it was made from', () =>
    fc.assert(
      fc.property(anyChoices, (choices) => {
        expect(read(`#${fragmentOf(choices)}`)).toEqual({ choices, refused: [] });
      }),
    ));

  it('reads as it is said to', () =>
    expect(fragmentOf({ ...start, seed: 7, lessons: ['two', 'five'], variants: 24 })).toBe(
      'v=1&seed=7&lessons=two,five&questions=4&variants=24&units=metric',
    ));

  it('puts lessons in their order, and each once', () =>
    expect(read('#v=1&lessons=five,one,five').choices.lessons).toEqual(['one', 'five']));

  it.each([
    'seed=0',
    'seed=1e3',
    'seed=99999999999',
    'variants=41',
    'variants=-1',
    'questions=x',
    'lessons=',
    'lessons=one,nine',
    'units=furlongs',
    'perPage=3',
    'print=money',
    'constructor=1',
    '__proto__=1',
    'toString=<script>',
  ])('tells %s, and keeps everything else', (part) => {
    const { choices, refused } = read(`#v=1&${part}&seed=12`);
    expect(refused).toEqual([part]);
    expect(choices).toEqual({ ...start, seed: 12 });
  });

  it('of another version opens nothing and says so', () =>
    expect(read('#v=2&seed=9')).toEqual({ choices: start, refused: ['v=2'] }));

  it('is none where the fragment leads to a place on the page', () =>
    expect(read('#content')).toEqual({ choices: start, refused: [] }));

  it('never throws, and never leaves the limits', () =>
    fc.assert(
      fc.property(fc.string(), fc.string(), (name, value) => {
        const { choices } = read(`#v=1&${name}=${value}&seed=${value}&variants=${name}`);
        expect(choices.seed).toBeLessThanOrEqual(LIMITS.seed.most);
        expect(choices.variants).toBeLessThanOrEqual(LIMITS.variants.most);
        expect(choices.lessons.every((lesson) => ALL.includes(lesson))).toBe(true);
      }),
    ));
});

describe('what is chosen on the page', () => {
  it('is nothing while a box holds what it cannot use, and what was typed stays', () => {
    const state = createSheetState(ALL, 'metric');
    state.texts.value = { ...state.texts.value, variants: '400' };
    expect(state.choices.value).toBeUndefined();
    expect(state.texts.value.variants).toBe('400');
    state.texts.value = { ...state.texts.value, variants: '4' };
    expect(state.choices.value).toEqual({ ...start, variants: 4 });
  });

  it('is nothing without a lesson, and keeps the lessons in their order', () => {
    const state = createSheetState(ALL, 'metric');
    for (const lesson of start.lessons) tickLesson(state, lesson, false);
    expect(state.choices.value).toBeUndefined();
    tickLesson(state, 'four', true);
    tickLesson(state, 'one', true);
    expect(state.choices.value?.lessons).toEqual(['one', 'four']);
  });

  it('follows a link, and remembers what of it was no use', () => {
    const state = createSheetState(ALL, 'us');
    takeLink(state, '#v=1&seed=5&variants=99', 'us');
    expect(state.choices.value).toEqual({ ...start, units: 'us', seed: 5 });
    expect(state.refused.value).toEqual(['variants=99']);
  });
});
