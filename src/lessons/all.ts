/** Every lesson's model and its words by the lesson's name, for the build and for tests; the browser loads one model at a time. */
import type { Model, Values } from '../models/define-model.ts';
import type { ModelWords } from '../models/words.ts';

const modules = import.meta.glob<Record<string, unknown>>('./*/model.ts', { eager: true });
const wordModules = import.meta.glob<{ readonly words: ModelWords }>('./*/words.ts', {
  eager: true,
});

const isModel = (value: unknown): value is Model =>
  typeof value === 'object' && value !== null && 'evaluate' in value && 'inputs' in value;

/** Models by name. */
export const models: Readonly<Record<string, Model>> = Object.fromEntries(
  Object.values(modules)
    .flatMap((module) => Object.values(module).filter(isModel))
    .map((model) => [model.name, model]),
);

/** How each model's quantities are named, by the name of the model. */
export const wordsOf: Readonly<Record<string, ModelWords>> = Object.fromEntries(
  Object.entries(wordModules).map(([path, { words }]) => [path.split('/')[1] ?? '', words]),
);

/** Where the inputs stand in a lesson's first question, by the lesson's name, where that is not at their defaults. */
export const askedOf: Readonly<Record<string, Values>> = Object.fromEntries(
  Object.entries(modules).flatMap(([path, { asked }]) =>
    asked ? [[path.split('/')[1] ?? '', asked as Values]] : [],
  ),
);
