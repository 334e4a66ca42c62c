/** Every lesson's model and its words by the lesson's name, for the build and for tests. */
import type { Values } from '../models/define-model.ts';
import type { ModelWords } from '../models/words.ts';

export { models } from './every-model.ts';

const wordModules = import.meta.glob<{ readonly words: ModelWords }>('./*/words.ts', {
  eager: true,
});
const modules = import.meta.glob<{ readonly asked?: Values }>('./*/model.ts', { eager: true });

/** How each model's quantities are named, by the name of the model. */
export const wordsOf: Readonly<Record<string, ModelWords>> = Object.fromEntries(
  Object.entries(wordModules).map(([path, { words }]) => [path.split('/')[1] ?? '', words]),
);

/** Where the inputs stand in a lesson's first question, by the lesson's name, where that is not at their defaults. */
export const askedOf: Readonly<Record<string, Values>> = Object.fromEntries(
  Object.entries(modules).flatMap(([path, { asked }]) =>
    asked ? [[path.split('/')[1] ?? '', asked]] : [],
  ),
);
