// @vitest-environment jsdom
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { GuessFirst } from '../../../src/live/elements/guess-first.ts';
import { reading } from '../../../src/live/reading.ts';
import type { PageStore } from '../../../src/live/store.ts';
import { unitSystem } from '../../../src/live/unit-system.ts';
import {
  AT_REST,
  only,
  openPage,
  press,
  slide,
  TEN_POUNDS,
  TWINS,
  textOf,
  type,
} from '../toy-page.ts';

const SPEC = {
  kind: 'force',
  symbol: '',
  label: 'force in a strand',
  default: 100,
  min: 0,
  max: 1000,
  step: { metric: 10, us: TEN_POUNDS },
};
const GUESS = `
  <guess-first data-spec='${JSON.stringify(SPEC)}'>
    <form>${TWINS}<button type="submit">This is my guess</button></form>
    <p data-said></p>
    <details><summary>What it is</summary>Half of the pull.</details>
  </guess-first>`;

let store: PageStore;
const box = () => only<HTMLInputElement>('.box');
const truth = () => only<HTMLDetailsElement>('details');

beforeAll(async () => {
  await reading.fetch();
});

beforeEach(() => {
  store = openPage(GUESS, { 'guess-first': GuessFirst });
});

describe('a guess', () => {
  it('is nothing, and the truth is shut, until it is committed', () => {
    slide(only<HTMLInputElement>('.slider'), 300);
    expect(store.guess.value).toBeUndefined();
    expect(truth().open).toBe(false);
    expect(textOf('[data-said]')).toBe('');
  });

  it('opens the truth, stays beside it, and can be made again', () => {
    slide(only<HTMLInputElement>('.slider'), 300);
    only('button').click();
    expect(store.guess.value).toBe(300);
    expect(truth().open).toBe(true);
    expect(textOf('[data-said]')).toBe('You guessed 300 N.');
    expect(textOf('button')).toBe('Guess again');
    type(box(), '60');
    expect(textOf('[data-said]')).toBe('You guessed 300 N.');
    only('button').click();
    expect(textOf('[data-said]')).toBe('You guessed 60.0 N.');
  });

  it('is committed by the Enter key of its box, but not by one on its slider', () => {
    type(box(), '60');
    expect(press(only('.slider'), 'Enter')).toBe(false); // it is held back
    expect(press(box(), 'Enter')).toBe(true); // the browser sends the form
    only<HTMLFormElement>('form').requestSubmit();
    expect(store.guess.value).toBe(60);
    expect(truth().open).toBe(true);
  });

  it('is the last good number where what stands in the box is refused', () => {
    type(box(), '60');
    type(box(), 'sixty');
    only('button').click();
    expect(store.guess.value).toBe(60);
    expect(only('.refusal').hidden).toBe(false);
  });

  it('does not touch the inputs of the lesson', () => {
    type(box(), '60');
    only('button').click();
    expect(store.values.value).toEqual(AT_REST);
  });

  it('is said in the units of now, and stays the same guess', () => {
    type(box(), '20 lbf');
    only('button').click();
    expect(textOf('[data-said]')).toBe('You guessed 89.0 N.');
    unitSystem.value = 'us';
    expect(textOf('[data-said]')).toBe('You guessed 20.0 lbf.');
    expect(store.guess.value).toBeCloseTo(2 * TEN_POUNDS, 9);
  });
});
