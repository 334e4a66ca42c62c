/** Every lesson's model by its name, for the build and for tests; the browser loads one at a time. */
import type { Model } from '../models/define-model.ts';

const modules = import.meta.glob<Record<string, unknown>>('./*/model.ts', { eager: true });

const isModel = (value: unknown): value is Model =>
  typeof value === 'object' && value !== null && 'evaluate' in value && 'inputs' in value;

/** Models by name. */
export const models: Readonly<Record<string, Model>> = Object.fromEntries(
  Object.values(modules)
    .flatMap((module) => Object.values(module).filter(isModel))
    .map((model) => [model.name, model]),
);
