/** Every lesson's model by its name, for the build and for tests; the browser loads one at a time. */
import type { Model } from './define-model.ts';
import { stiffSpring } from './stiff-spring.ts';

/** Models by name. */
export const models: Readonly<Record<string, Model>> = Object.fromEntries(
  [stiffSpring].map((model) => [model.name, model]),
);
