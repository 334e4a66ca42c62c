import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { randomSource } from '../../src/core/random.ts';
import { FigureBody } from '../../src/figures/FigureBody.tsx';
import type { FigureModule, FigureState } from '../../src/figures/figure.ts';
import { models } from '../../src/lessons/all.ts';
import {
  evaluated,
  inputsAt,
  isChoice,
  type Model,
  type Values,
} from '../../src/models/define-model.ts';

const modules = import.meta.glob<{ figure: FigureModule & { model?: string } }>(
  '../../src/lessons/*/*.figure.tsx',
  { eager: true },
);
const figures = Object.entries(modules).map(([file, { figure }]) => {
  const [slug = '', name = ''] = file.split('/').slice(-2);
  return { name: `${slug}/${name}`, figure, model: models[slug] };
});

/** Inputs of a model: its defaults, its corners, and some between, from a seed. */
function someInputs(model: Model) {
  const random = randomSource(7).uniform;
  const pick = (choose: (low: number, high: number) => number): Values =>
    Object.fromEntries(
      Object.entries(model.inputs).map(([name, spec]) => {
        if (!isChoice(spec)) return [name, choose(spec.min, spec.max)];
        const { options, default: usual } = spec;
        return [name, options[Math.round(choose(0, options.length - 1))] ?? usual];
      }),
    );
  const between = Array.from({ length: 12 }, () =>
    pick((low, high) => low + random() * (high - low)),
  );
  return [pick((low) => low), pick((_, high) => high), ...between];
}

describe.each(figures)('the figure $name', ({ name, figure, model }) => {
  it('belongs to a model', () => expect(model?.name).toBeDefined());
  if (!model) return;
  const none: Values = {};
  const states = [none, ...someInputs(model)].flatMap((inputs) => {
    const values = evaluated(model, inputsAt(model, inputs, 'metric'));
    return (['metric', 'us'] as const).flatMap((system) =>
      [false, true].map(
        (narrow): FigureState => ({ values, system, narrow, idPrefix: `${name}-${system}` }),
      ),
    );
  });

  it('is drawn from its state alone: the same state, the same drawing', () => {
    for (const state of states.slice(0, 8)) {
      const once = render(h(FigureBody, { figure, state }));
      expect(render(h(FigureBody, { figure, state }))).toBe(once);
    }
  });
});
