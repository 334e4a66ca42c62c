/** What the core wants told about some part of the sheet: stops in an ink frame, the rest as lines. */
import type { JSX } from 'preact';
import { guardSentence } from './guard-words.ts';
import { sheetView } from './sheet-view.ts';

interface Props {
  readonly about: (fields: readonly string[]) => boolean;
}

/** The guards that are about the given boxes. */
export function Guards({ about }: Props): JSX.Element | null {
  const { results, shown } = sheetView();
  const found = (results?.guards ?? []).filter(
    ({ code, fields }) =>
      about(fields) && (results?.setting.ready === true || code !== 'wideUncertainty'),
  );
  const sentences = new Map(found.map((guard) => [guardSentence(guard, shown), guard.level]));
  if (sentences.size === 0) return null;
  return (
    <ul class="guards">
      {[...sentences].map(([sentence, level]) => (
        <li key={sentence} class={`guard is-${level}`}>
          {sentence}
        </li>
      ))}
    </ul>
  );
}
