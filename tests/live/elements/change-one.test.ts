// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { ChangeOne } from '../../../src/live/elements/change-one.ts';
import { setInput } from '../../../src/live/store.ts';
import { unitSystem } from '../../../src/live/unit-system.ts';
import { countRuns, ONE_STRAND, only, openPage, TEN_POUNDS, TWO_STRANDS } from '../toy-page.ts';

const open = (
  data: string,
  inside = '<form><button>Change</button></form><p data-then="waiting">Then.</p>',
) => openPage(`<change-one ${data}>${inside}</change-one>`, { 'change-one': ChangeOne });

describe('the one thing to change', () => {
  it('is set, the others go back to the start, and what happens is told', () => {
    const store = open('data-input="pull" data-to="240"');
    setInput(store, 'strands', ONE_STRAND);
    expect(only('p').dataset['then']).toBe('waiting');
    only('button').click();
    expect(store.values.value).toEqual({ pull: 240, strands: TWO_STRANDS, strand: 120 });
    expect(only('p').dataset['then']).toBe('told');
  });

  it('is set at once: the figure is not drawn in between', () => {
    const store = open('data-input="pull" data-to="240"');
    setInput(store, 'pull', 500);
    const runs = countRuns(() => store.values.value);
    only('button').click();
    expect(runs()).toBe(2);
  });

  it('is round in the units of its reader', () => {
    const store = open('data-input="pull" data-to="240"');
    unitSystem.value = 'us';
    only('button').click();
    expect(store.inputs['pull']?.value).toBeCloseTo(5 * TEN_POUNDS, 9); // 240 N are 54 lbf
  });

  it('tells nothing that holds no longer', () => {
    const store = open('data-input="pull" data-to="240"');
    only('button').click();
    setInput(store, 'pull', 500);
    expect(only('p').dataset['then']).toBe('waiting');
  });

  it('may be a choice', () => {
    const store = open(`data-input="strands" data-to="${ONE_STRAND}"`);
    only('button').click();
    expect(store.values.value['strands']).toBe(ONE_STRAND);
  });

  it.each([
    ['data-input="colour" data-to="3"', undefined],
    ['data-input="pull" data-to="long"', undefined],
    ['', undefined],
    ['data-input="pull" data-to="240"', '<form><button>Change</button></form>'],
  ])('changes nothing where the page names what there is not: %s', (data, inside) => {
    const store = open(data, inside);
    document.querySelector('button')?.click();
    expect(store.values.value['pull']).toBe(100);
  });
});
