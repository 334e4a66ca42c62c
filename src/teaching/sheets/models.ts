/** The models of all lessons, fetched when the first sheet is drawn and kept. */
import type { Model } from '../../models/define-model.ts';

type Models = Readonly<Record<string, Model>>;

let fetched: Promise<Models> | undefined;

/** The models by the names of their lessons; asked for again the next time where they do not arrive. */
export function fetchModels(): Promise<Models> {
  fetched ??= import('../../lessons/every-model.ts').then(({ models }) => models);
  fetched.catch(() => {
    fetched = undefined;
  });
  return fetched;
}
