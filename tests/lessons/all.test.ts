import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { models } from '../../src/lessons/all.ts';
import { defaults, evaluated, type Model } from '../../src/models/define-model.ts';
import { KINDS } from '../../src/units/kinds.ts';

/** Any inputs within the declared ranges, choices as whole numbers, corners included often. */
function inputsOf(model: Model) {
  return fc.record(
    Object.fromEntries(
      Object.entries(model.inputs).map(([name, { min, max, options }]) => [
        name,
        options
          ? fc.integer({ min, max })
          : fc.oneof(fc.constantFrom(min, max), fc.double({ min, max, noNaN: true })),
      ]),
    ),
  );
}

describe.each(Object.entries(models))('the model %s', (_, model) => {
  it('gives every declared output at its defaults, and no other', () => {
    const outputs = model.evaluate(defaults(model));
    expect(Object.keys(outputs).sort()).toEqual(Object.keys(model.outputs).sort());
  });
  it('is finite over all of its ranges', () =>
    fc.assert(
      fc.property(inputsOf(model), (inputs) => {
        const values = evaluated(model, inputs);
        const bad = Object.entries(values).filter(([, value]) => !Number.isFinite(value));
        expect(bad).toEqual([]);
      }),
      { numRuns: 300 },
    ));
  it('names only kinds that the site can show, and steps that fit the range', () => {
    for (const [name, { kind }] of Object.entries({ ...model.inputs, ...model.outputs })) {
      expect(Object.keys(KINDS), name).toContain(kind);
    }
    for (const [name, { min, max, step }] of Object.entries(model.inputs)) {
      for (const one of [step.metric, step.us]) {
        expect(one, name).toBeGreaterThan(0);
        expect(one, name).toBeLessThanOrEqual(max - min);
      }
    }
  });
});

describe('the models', () => {
  it('are there', () => expect(Object.keys(models)).toContain('stiff-spring'));
});
