/** What the pieces of a lesson share while a page is built: the model, its values as they start, the lesson's words. */

import { askedOf, models, wordsOf } from '../../lessons/all.ts';
import { evaluated, inputsAt, type Model, type Values } from '../../models/define-model.ts';
import type { ModelWords } from '../../models/words.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { lettersToName } from './equation-letters.ts';
import { inputsNamed } from './names.ts';

/** The same values round in either unit system, as readers of each start with them. */
export type ValuesBySystem = Readonly<Record<UnitSystem, Values>>;

/** Set by the lesson page on `Astro.locals`, read by the components that the lesson's text uses. */
export interface LessonContext {
  readonly slug: string;
  /** The file of its words, as a refusal names it. */
  readonly file: string;
  readonly model: Model;
  readonly words: ModelWords;
  readonly values: ValuesBySystem;
  /** Keys of the words that the lesson explains at its foot. */
  readonly terms: readonly string[];
  /** The inputs that the text has shown so far: one may stand in several figures, each time with an id of its own. */
  readonly shown: string[];
  /** For each equation, by its TeX, the quantities whose letter is named under it. */
  readonly letters: ReadonlyMap<string, readonly string[]>;
  /** What the guess should have been, as HTML, once the lesson's text has come to it. */
  readonly guessAnswer: PromiseWithResolvers<string>;
}

function valuesOf(model: Model, at: Values, exact = false): ValuesBySystem {
  const one = (system: UnitSystem) => {
    const inputs = inputsAt(model, at, system);
    return evaluated(model, exact ? { ...inputs, ...at } : inputs);
  };
  return { metric: one('metric'), us: one('us') };
}

/** The context of a lesson; a page may start at inputs of its own. @throws RangeError when the lesson has no folder with a model */
export function lessonContext(
  slug: string,
  terms: readonly string[],
  body?: string,
  start: Values = {},
): LessonContext {
  const model = models[slug];
  const words = wordsOf[slug];
  if (!model || !words) throw new RangeError(`${slug} must have a folder in src/lessons`);
  return {
    slug,
    file: `content/lessons/${slug}.mdx`,
    model,
    words,
    values: valuesOf(model, start),
    terms,
    shown: [],
    letters: lettersToName(body),
    guessAnswer: Promise.withResolvers(),
  };
}

/**
 * The model's values with some inputs set, for worked examples and guesses: round in the reader's own unit, or `exact`
 * as given, for a thing that has its size in one unit only, such as a metric thread; `asked` where the model has them
 * for the lesson's first question.
 * @throws RangeError for what is no input of the model or none of its values
 */
export function valuesAt(
  lesson: LessonContext,
  at: Values | 'asked',
  exact = false,
): ValuesBySystem {
  const inputs = at === 'asked' ? askedOf[lesson.slug] : at;
  if (!inputs) throw new RangeError(`${lesson.file}: at must be inputs, its model has no asked`);
  return valuesOf(lesson.model, inputsNamed(lesson, 'at', inputs), exact);
}
