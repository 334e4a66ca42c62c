import { describe, expect, it } from 'vitest';
import {
  clamped,
  defaults,
  defineModel,
  evaluated,
  inputsAt,
  kindOf,
  numberAt,
  quantitySpec,
} from '../../src/models/define-model.ts';
import { hand, inkOf, labelOf, type ModelWords, plain, steel } from '../../src/models/words.ts';

const pull = {
  kind: 'force',
  default: 10,
  min: 0,
  max: 100,
  step: { metric: 1, us: 4.448 },
} as const;
const strands = { options: ['one', 'two'], default: 'two' } as const;

const model = defineModel({
  name: 'two-strands',
  inputs: { pull, strands },
  outputs: { strand: 'force', share: 'ratio' },
  constants: { share: 0.5 },
  evaluate: ({ pull: force, strands: count }) => ({ strand: count === 'two' ? force / 2 : force }),
});
const words: ModelWords<typeof model> = {
  inputs: {
    pull: hand('pull', 'F'),
    strands: { label: 'held by', options: { one: 'one strand', two: 'two strands' } },
  },
  outputs: { strand: steel('force in one strand', 'T'), share: plain('share') },
};

describe('defineModel', () => {
  it('keeps inputs, constants and outputs together for pages', () => {
    const start = { pull: 10, strands: 'two', strand: 5, share: 0.5 };
    expect(evaluated(model, defaults(model))).toEqual(start);
  });
  it('keeps their names in the type: another is refused by the compiler', () => {
    const values = evaluated(model, { pull: 8, strands: 'one' });
    expect(values.strand).toBe(8);
    // @ts-expect-error the name is misspelt
    expect(values.stand).toBeUndefined();
    // @ts-expect-error the choice has no such option
    expect(values.strands === 'three').toBe(false);
    // @ts-expect-error an output without words
    const short: ModelWords<typeof model>['outputs'] = { strand: words.outputs.strand };
    expect(short).toBeDefined();
  });
  it('starts readers of US units on another option where a choice has one', () => {
    const draft = { name: 'm', outputs: {}, evaluate: () => ({}) };
    const face = { ...strands, us: 'one' } as const;
    const other = defineModel({ ...draft, inputs: { face } });
    expect([defaults(other).face, defaults(other, 'us').face]).toEqual(['two', 'one']);
    expect(inputsAt(other, { face: 'two' }, 'us').face).toBe('two');
  });
  it('refuses a default outside what can be set', () => {
    const draft = { name: 'm', outputs: {}, evaluate: () => ({}) };
    expect(() => defineModel({ ...draft, inputs: { pull: { ...pull, default: 101 } } })).toThrow(
      'pull must be between 0 and 100 by default (was 101)',
    );
    expect(() =>
      defineModel({ ...draft, inputs: { strands: { ...strands, default: 'six' } } }),
    ).toThrow('strands must be one of its options by default (was six)');
  });
  it('refuses a name that is both input and output', () =>
    expect(() =>
      defineModel({
        name: 'm',
        inputs: { pull },
        outputs: { pull: 'force' },
        evaluate: () => ({ pull: 1 }),
      }),
    ).toThrow(/pull must be an input or an output/));
  it('rounds quantities in the reader’s own unit, and leaves choices as they are', () => {
    const { pull: round, strands: chosen } = inputsAt(model, { pull: 10, strands: 'one' }, 'us');
    expect(round).toBeCloseTo(2 * 4.448, 12);
    expect(chosen).toBe('one');
  });
  it('keeps values inside the range', () =>
    expect([-1, 50, 1000].map((value) => clamped(pull, value))).toEqual([0, 50, 100]));
});

describe('names that no compiler reads', () => {
  it('find the kind of an input or an output, and refuse a choice and a stranger', () => {
    expect([kindOf(model, 'pull'), kindOf(model, 'share')]).toEqual(['force', 'ratio']);
    for (const name of ['strands', 'stand', 'toString']) {
      expect(() => kindOf(model, name)).toThrow(`${name} must be a quantity of two-strands`);
    }
  });
  it('find what a quantity may be set to, of no output, choice or stranger', () => {
    expect(quantitySpec(model, 'pull').max).toBe(100);
    for (const name of ['strands', 'strand', 'toString']) {
      expect(() => quantitySpec(model, name)).toThrow(/must be a quantity that is set/);
    }
  });
  it('find a number among values, never a nought for a stranger', () => {
    const values = evaluated(model, defaults(model));
    expect(numberAt(values, 'strand')).toBe(5);
    for (const name of ['strands', 'stand', 'toString']) {
      expect(() => numberAt(values, name)).toThrow(`${name} must be a quantity of the model`);
    }
  });
});

describe('the words of a model', () => {
  it('write inputs in the hand’s ink and outputs in their own', () =>
    expect(['pull', 'strands', 'strand', 'share'].map((name) => inkOf(words, name))).toEqual([
      'hand',
      'hand',
      'steel',
      'plain',
    ]));
  it('find the label of a quantity, and refuse a choice and a stranger', () => {
    expect(labelOf(words, 'strand')).toMatchObject({ label: 'force in one strand', symbol: 'T' });
    for (const name of ['strands', 'stand', 'toString']) {
      expect(() => labelOf(words, name)).toThrow(`${name} must be a quantity of the model`);
    }
    expect(() => inkOf(words, 'toString')).toThrow(/must be an input or output/);
  });
});
