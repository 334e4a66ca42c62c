/** What was typed and chosen on the form before its script was there: taken over, never wiped. */
import { type ChoicePath, isFieldPath } from '../../form/paths.ts';
import { chosenAt, typedAt } from '../../form/typed.ts';
import type { Command } from './project.ts';
import { newSheet, run, type SheetStore } from './store.ts';

type Early = Extract<Command, { do: 'type' | 'choose' }>;

const CHOICE = 'choice-';

function commandOf(input: HTMLInputElement): Early | undefined {
  const { value, checked, defaultChecked, name } = input;
  const path = input.dataset['path'] ?? name.replace(CHOICE, '');
  if (!isFieldPath(path)) return undefined;
  if (input.type === 'text') return value === '' ? undefined : { do: 'type', path, text: value };
  const isChosen = checked && !defaultChecked;
  return isChosen ? { do: 'choose', path: path as ChoicePath, text: value } : undefined;
}

/** What stands on the form as it was built, as commands. */
const standingOn = (form: HTMLElement): readonly Early[] =>
  [...form.querySelectorAll('input')].flatMap((input) => commandOf(input) ?? []);

/**
 * Takes over what stands on the built form; beside a sheet that was kept, as a sheet of its own, so that no two mills
 * are mixed. Tells whether it is one.
 */
export function takeEarlyTyping(store: SheetStore, form: HTMLElement): boolean {
  const { typed } = store.project.peek();
  const fresh = standingOn(form).filter(({ do: what, path, text }) =>
    what === 'choose' ? chosenAt(typed, path) !== text : typedAt(typed, path) !== text,
  );
  const isBesideAnother = fresh.length > 0 && store.sheets.has(store.id.peek());
  if (isBesideAnother) newSheet(store);
  for (const command of fresh) run(store, command);
  return isBesideAnother;
}
