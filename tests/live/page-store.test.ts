// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from 'vitest';
import { createPageStore, quantityInput, resetInputs, setInput } from '../../src/live/store.ts';
import { unitSystem } from '../../src/live/unit-system.ts';
import {
  AT_REST,
  countRuns,
  ONE_STRAND,
  startAfresh,
  TEN_POUNDS,
  TWO_STRANDS,
  toy,
} from './toy-page.ts';

beforeEach(startAfresh);

describe('a page store', () => {
  it('starts at the defaults and computes what follows: 100 N on two strands is 50', () => {
    const { values, guess } = createPageStore(toy, {});
    expect(values.value).toEqual(AT_REST);
    expect(guess.value).toBeUndefined();
  });

  it('starts at a link’s inputs, within their ranges; names that it does not have stay out', () => {
    const { values } = createPageStore(toy, { pull: 5000, colour: 3 });
    expect(values.value).toEqual({ pull: 1000, strands: TWO_STRANDS, strand: 500 });
  });

  it('of a page with inputs of its own starts there, and goes back there', () => {
    const store = createPageStore(toy, {}, { pull: 240 });
    expect(store.values.value['pull']).toBe(240);
    setInput(store, 'pull', 700);
    resetInputs(store);
    expect(store.values.value).toEqual({ pull: 240, strands: TWO_STRANDS, strand: 120 });
    unitSystem.value = 'us';
    expect(store.inputs['pull']?.value).toBeCloseTo(5 * TEN_POUNDS, 9); // 240 N are 54 lbf
    expect(createPageStore(toy, { pull: 50 }, { pull: 240 }).values.value['pull']).toBe(50);
  });

  it('computes once for each change, and not at all for the same number again', () => {
    const store = createPageStore(toy, {});
    const runs = countRuns(() => store.values.value);
    setInput(store, 'pull', 240);
    setInput(store, 'pull', 240);
    expect(runs()).toBe(2);
    expect(store.values.value['strand']).toBe(120);
  });

  it.each([
    [-3, 0],
    [1e9, 1000],
    [400, 400],
  ])('keeps %s within the range: %s', (given, kept) => {
    const store = createPageStore(toy, {});
    setInput(store, 'pull', given);
    expect(store.values.value['pull']).toBe(kept);
  });

  it.each([
    ['no number', 'pull', Number.NaN],
    ['what has no end', 'pull', Number.POSITIVE_INFINITY],
    ['a stranger', 'colour', 3],
    ['an output', 'strand', 3],
    ['a name from the object’s own house', 'constructor', 3],
    ['words for a quantity', 'pull', 'long'],
    ['an option that there is not', 'strands', 'three'],
    ['a number for a choice', 'strands', 1],
  ])('does not take %s', (_, name, value) => {
    const store = createPageStore(toy, {});
    setInput(store, name, value);
    expect(store.values.value).toEqual(AT_REST);
  });
});

describe('a change of units', () => {
  it('moves inputs that nobody touched to the nearest round number, and back', () => {
    const { inputs } = createPageStore(toy, {});
    unitSystem.value = 'us';
    expect(inputs['pull']?.value).toBeCloseTo(2 * TEN_POUNDS, 9); // 100 N are 22.5 lbf
    unitSystem.value = 'metric';
    expect(inputs['pull']?.value).toBe(100);
  });

  it('starts on round numbers where it came before the page', () => {
    unitSystem.value = 'us';
    expect(createPageStore(toy, {}).inputs['pull']?.value).toBeCloseTo(2 * TEN_POUNDS, 9);
  });

  it('moves nothing once one input was touched, nor what a link has set', () => {
    const touched = createPageStore(toy, {});
    setInput(touched, 'strands', ONE_STRAND);
    const linked = createPageStore(toy, { pull: 100.5 });
    unitSystem.value = 'us';
    expect(touched.values.value).toEqual({ pull: 100, strands: ONE_STRAND, strand: 100 });
    expect(linked.values.value['pull']).toBe(100.5);
  });
});

describe('starting again', () => {
  it('puts every input back, to the round numbers of the units of now', () => {
    const store = createPageStore(toy, { pull: 700, strands: ONE_STRAND });
    resetInputs(store);
    expect(store.values.value).toEqual(AT_REST);
    setInput(store, 'pull', 700);
    unitSystem.value = 'us';
    resetInputs(store);
    expect(store.values.value['pull']).toBeCloseTo(2 * TEN_POUNDS, 9);
  });

  it('leaves the guess, which was made before', () => {
    const store = createPageStore(toy, {});
    store.guess.value = 60;
    resetInputs(store);
    expect(store.guess.value).toBe(60);
  });
});

describe('a quantity of the store', () => {
  it('is told from a choice and from what only follows', () => {
    const store = createPageStore(toy, {});
    expect(quantityInput(store, 'pull')?.spec).toBe(toy.inputs.pull);
    expect(quantityInput(store, 'strands')).toBeUndefined();
    expect(quantityInput(store, 'strand')).toBeUndefined();
  });
});
