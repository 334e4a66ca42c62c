/** What was undone or done again, for who listens. */
import { findField } from '../../form/paths.ts';
import type { RowName } from '../../form/series.ts';
import type { Command } from '../state/project.ts';
import { cellName } from './waiting-words.ts';

const VERBS = { undo: 'Undone', redo: 'Redone' } as const;

/** The sentence about a step; `text` is what stands in its box now. */
export function stepSentence(
  way: keyof typeof VERBS,
  command: Command,
  text: string,
  ofReadings?: RowName,
): string {
  const verb = VERBS[way];
  if (!('path' in command)) return `${verb}.`;
  const name = cellName(command.path, ofReadings);
  if (command.do === 'fill') return `${verb}: what was put in from ${name} on.`;
  if (command.do !== 'type' && command.do !== 'choose') return `${verb}.`;
  const field = findField(command.path);
  const now = field && 'options' in field ? field.options[text] : text;
  return `${verb}: ${name}, now ${now || 'empty'}.`;
}
