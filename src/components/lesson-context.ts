/** What the pieces of a lesson share while a page is built: the model, its values as they start, the lesson's key. */

import { models } from '../models/all.ts';
import { defaults, evaluated, type Model, type Values } from '../models/define-model.ts';

/** Set by the lesson page on `Astro.locals`, read by the components that the lesson's text uses. */
export interface LessonContext {
  readonly slug: string;
  readonly model: Model;
  readonly values: Values;
}

/** The context of a lesson. @throws RangeError when the lesson names a model that is not there */
export function lessonContext(slug: string, modelName: string): LessonContext {
  const model = models[modelName];
  if (!model) throw new RangeError(`model of ${slug} must be one of ours (was ${modelName})`);
  return { slug, model, values: evaluated(model, defaults(model)) };
}

/** The model's values with some inputs set, for worked examples and guesses. */
export function valuesAt({ model }: LessonContext, at: Values = {}): Values {
  return evaluated(model, { ...defaults(model), ...at });
}
