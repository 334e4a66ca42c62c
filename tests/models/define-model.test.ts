import { describe, expect, it } from 'vitest';
import {
  clamped,
  defaults,
  defineModel,
  evaluated,
  inkOf,
  quantity,
} from '../../src/models/define-model.ts';

const pull = {
  kind: 'force',
  symbol: 'F',
  label: 'pull',
  default: 10,
  min: 0,
  max: 100,
  step: { metric: 1, us: 4.448 },
} as const;

const draft = {
  name: 'two-strands',
  inputs: { pull },
  outputs: {
    strand: { kind: 'force', symbol: 'T', label: 'force in one strand' },
    share: { kind: 'ratio', symbol: '', label: 'share', ink: 'plain' },
  },
  evaluate: ({ pull: force }: Readonly<Record<'pull', number>>) => ({
    strand: force / 2,
    share: 0.5,
  }),
} as const;

describe('defineModel', () => {
  const model = defineModel(draft);
  it('keeps inputs and outputs together for pages', () =>
    expect(evaluated(model, defaults(model))).toEqual({ pull: 10, strand: 5, share: 0.5 }));
  it('writes inputs in the hand’s ink and outputs in the steel’s unless said otherwise', () =>
    expect(['pull', 'strand', 'share'].map((name) => inkOf(model, name))).toEqual([
      'hand',
      'steel',
      'plain',
    ]));
  it('refuses a default outside its range', () =>
    expect(() => defineModel({ ...draft, inputs: { pull: { ...pull, default: 101 } } })).toThrow(
      /pull must be between 0 and 100 by default \(was 101\)/,
    ));
  it('refuses a name that is both input and output', () =>
    expect(() =>
      defineModel({
        ...draft,
        outputs: { pull: draft.outputs.strand },
        evaluate: () => ({ pull: 1 }),
      }),
    ).toThrow(/pull must be an input or an output/));
  it('finds the label of either, and refuses a stranger', () => {
    expect(quantity(model, 'strand').label).toBe('force in one strand');
    expect(() => quantity(model, 'toString')).toThrow(/must be an input or output of two-strands/);
  });
  it('keeps values inside the range', () =>
    expect([-1, 50, 1000].map((value) => clamped(pull, value))).toEqual([0, 50, 100]));
});
