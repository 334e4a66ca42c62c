import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { models, wordsOf } from '../../src/lessons/all.ts';
import {
  defaults,
  evaluated,
  type InputSpec,
  isChoice,
  kindOf,
  type Model,
  type QuantityInput,
  quantitySpec,
} from '../../src/models/define-model.ts';
import { inkOf, labelOf } from '../../src/models/words.ts';
import { KINDS } from '../../src/units/kinds.ts';

const between = ({ min, max }: QuantityInput) =>
  fc.oneof(fc.constantFrom(min, max), fc.double({ min, max, noNaN: true }));

/** Any inputs within the declared ranges, any of the choices, corners included often. */
function inputsOf(model: Model) {
  return fc.record(
    Object.fromEntries(
      Object.entries(model.inputs).map(([name, spec]) => [
        name,
        isChoice(spec) ? fc.constantFrom(...spec.options) : between(spec),
      ]),
    ),
  );
}

describe.each(Object.entries(models))('the model %s', (_, model) => {
  it('gives every declared output at its defaults, and no other', () => {
    const outputs = { ...model.constants, ...model.evaluate(defaults(model)) };
    expect(Object.keys(outputs).sort()).toEqual(Object.keys(model.outputs).sort());
  });
  it('is finite over all of its ranges', () =>
    fc.assert(
      fc.property(inputsOf(model), (inputs) => {
        const values = evaluated(model, inputs);
        const bad = Object.keys(model.outputs).filter((name) => !Number.isFinite(values[name]));
        expect(bad).toEqual([]);
      }),
      { numRuns: 300 },
    ));
  it('starts readers of either units on an option that its choices have', () => {
    const wrong = Object.entries<InputSpec>(model.inputs).filter(
      ([name, spec]) =>
        isChoice(spec) &&
        ![defaults(model)[name], defaults(model, 'us')[name]].every((start) =>
          spec.options.some((option) => option === start),
        ),
    );
    expect(wrong).toEqual([]);
  });
  it('names only kinds that the site can show, and steps that fit the range', () => {
    const quantities = Object.entries(model.inputs).flatMap(([name, spec]) =>
      isChoice(spec) ? [] : [name],
    );
    for (const name of [...quantities, ...Object.keys(model.outputs)]) {
      expect(Object.keys(KINDS), name).toContain(kindOf(model, name));
    }
    for (const name of quantities) {
      const { min, max, step } = quantitySpec(model, name);
      for (const one of [step.metric, step.us]) {
        expect(one, name).toBeGreaterThan(0);
        expect(one, name).toBeLessThanOrEqual(max - min);
      }
    }
  });
});

describe.each(Object.entries(models))('the words of %s', (slug, model) => {
  const words = wordsOf[slug];
  it('name every input and output, and nothing else', () => {
    expect(Object.keys(words?.inputs ?? {}).sort()).toEqual(Object.keys(model.inputs).sort());
    expect(Object.keys(words?.outputs ?? {}).sort()).toEqual(Object.keys(model.outputs).sort());
  });
  it('are not empty, and every option of a choice has its own', () => {
    if (!words) throw new Error(`${slug} has no words`);
    for (const name of Object.keys(model.outputs)) {
      expect(labelOf(words, name).label).not.toBe('');
      expect(inkOf(words, name)).toMatch(/^(hand|steel|plain)$/);
    }
    for (const [name, spec] of Object.entries(model.inputs)) {
      const said = words.inputs[name];
      expect(said?.label).not.toBe('');
      if (isChoice(spec))
        expect(said).toHaveProperty('options', expect.toSatisfy(namesAll(spec.options)));
    }
  });
});

const namesAll = (names: readonly string[]) => (options: object) =>
  Object.keys(options).sort().join() === [...names].sort().join();

describe('the models', () => {
  it('are those of all lessons', () =>
    expect(Object.keys(models).toSorted()).toEqual(Object.keys(wordsOf).toSorted()));
});
