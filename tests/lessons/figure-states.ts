/** Every figure of the lessons, and the states in which the tests look at it. */
import { readFileSync } from 'node:fs';
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { randomSource } from '../../src/core/random.ts';
import { FigureBody, FigureNotes } from '../../src/figures/FigureBody.tsx';
import type { FigureModule, FigureState } from '../../src/figures/figure.ts';
import { models } from '../../src/lessons/all.ts';
import {
  defaults,
  evaluated,
  type InputSpec,
  isChoice,
  type Model,
  type Values,
} from '../../src/models/define-model.ts';
import { cornersOf } from './input-corners.ts';

const modules = import.meta.glob<{ figure: FigureModule }>('../../src/lessons/*/*.figure.tsx', {
  eager: true,
});

/** A figure with its model and the ends of what the lesson lets the reader guess. */
export interface LessonFigure {
  readonly name: string;
  readonly figure: FigureModule;
  readonly model: Model;
  readonly guesses: readonly number[];
}

/** The least and the most that the lesson's guess can be set to, SI. */
function guessesOf(slug: string): readonly number[] {
  const text = readFileSync(`content/lessons/${slug}.mdx`, 'utf8');
  const [, min, max] = text.match(/<Guess [^>]*min=\{([^}]+)\} max=\{([^}]+)\}/) ?? [];
  if (min === undefined || max === undefined) throw new Error(`${slug} lets nobody guess`);
  return [Number(min), Number(max)];
}

/** All figures, by their file in the lessons' folder. */
export const figures: readonly LessonFigure[] = Object.entries(modules).map(
  ([file, { figure }]) => {
    const [slug = '', name = ''] = file.split('/').slice(-2);
    const model = models[slug];
    if (!model) throw new Error(`${slug} has no model`);
    return { name: `${slug}/${name}`, figure, model, guesses: guessesOf(slug) };
  },
);

/** How a figure is looked at, whatever its inputs are. */
export type View = Omit<FigureState, 'values'>;

/** Both widths in both unit systems. */
export const VIEWS: readonly View[] = [false, true].flatMap((narrow) =>
  (['metric', 'us'] as const).map((system) => ({ narrow, system, idPrefix: `figure-${system}` })),
);

/** All that a figure shows in a state, as HTML. */
export function drawn(figure: FigureModule, state: FigureState): string {
  return render(h(FigureBody, { figure, state })) + render(h(FigureNotes, { figure, state }));
}

/** Any inputs between the ends, a dozen, the same ones each time. */
function between(model: Model): readonly Values[] {
  const random = randomSource(7).uniform;
  return Array.from({ length: 12 }, () =>
    Object.fromEntries(
      Object.entries<InputSpec>(model.inputs).map(([name, spec]) => {
        if (!isChoice(spec)) return [name, spec.min + random() * (spec.max - spec.min)];
        const place = Math.floor(random() * spec.options.length);
        return [name, spec.options[place] ?? spec.default];
      }),
    ),
  );
}

/** What a figure is drawn from: at rest, then in all corners of what shows in it, then at a dozen inputs between. */
export function valuesOf({ figure, model }: LessonFigure): readonly Values[] {
  const [view] = VIEWS as [View];
  const draw = (inputs: Values) => drawn(figure, { ...view, values: evaluated(model, inputs) });
  return [defaults(model), ...cornersOf(model, draw), ...between(model)].map((inputs) =>
    evaluated(model, inputs),
  );
}

/** The views of a figure: also with the least and the most that can be guessed, where a guess shows in it. */
export function viewsOf({ figure, model, guesses }: LessonFigure): readonly View[] {
  const values = evaluated(model, defaults(model));
  const [view] = VIEWS as [View];
  const draw = (guess?: number) => drawn(figure, { ...view, values, guess });
  const shown = guesses.filter((guess) => draw(guess) !== draw());
  return VIEWS.flatMap((each) => [each, ...shown.map((guess) => ({ ...each, guess }))]);
}
