// @vitest-environment jsdom
/** The store of a lesson page keeps every input within what it may hold. */
import { describe, expect, it } from 'vitest';
import { stiffSpring } from '../../src/lessons/stiff-spring/model.ts';
import { createPageStore, quantityInput, resetInputs, setInput } from '../../src/live/store.ts';
import { defaults, evaluated } from '../../src/models/define-model.ts';

const held = (store: ReturnType<typeof createPageStore>) => store.values.value;

describe('the store', () => {
  it('starts at the defaults, with all that follows from them', () =>
    expect(held(createPageStore(stiffSpring, {}))).toEqual(
      evaluated(stiffSpring, defaults(stiffSpring)),
    ));
  it('starts at a link’s inputs, kept within what each may hold', () => {
    const store = createPageStore(stiffSpring, { stretch: 9, released: 'letGo', stranger: 1 });
    expect(held(store)).toMatchObject({ stretch: 2.4e-3, released: 'letGo' });
    expect(held(store)).not.toHaveProperty('stranger');
    expect(held(createPageStore(stiffSpring, { released: 'flying' }))['released']).toBe('held');
  });
  it('takes numbers within the range and options by name, and nothing else', () => {
    const store = createPageStore(stiffSpring, {});
    setInput(store, 'stretch', 2e-4);
    setInput(store, 'released', 'letGo');
    expect(held(store)).toMatchObject({ stretch: 2e-4, released: 'letGo' });
    setInput(store, 'stretch', Number.NaN);
    setInput(store, 'stretch', 'long');
    setInput(store, 'released', 1);
    setInput(store, 'stranger', 1);
    expect(held(store)).toMatchObject({ stretch: 2e-4, released: 'letGo' });
  });
  it('goes back to what the lesson starts with', () => {
    const store = createPageStore(stiffSpring, { stretch: 2e-4, released: 'letGo' });
    resetInputs(store);
    expect(held(store)).toMatchObject(defaults(stiffSpring));
  });
  it('tells a quantity from a choice and from a stranger', () => {
    const store = createPageStore(stiffSpring, {});
    expect(quantityInput(store, 'stretch')?.spec).toBe(stiffSpring.inputs.stretch);
    expect(quantityInput(store, 'released')).toBeUndefined();
    expect(quantityInput(store, 'stress')).toBeUndefined();
  });
});
