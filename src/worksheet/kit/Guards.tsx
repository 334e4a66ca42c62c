/** What the core wants told about some part of the sheet: stops in an ink frame, the rest as lines. */
import type { JSX } from 'preact';
import { sheetView } from '../state/view.ts';
import { readingBox } from '../words/box-refusals.ts';
import { guardSentence } from '../words/guard-words.ts';

type Part = 'readings' | 'ways' | 'setting';

/** The part that a guard stands in, by its boxes; none where it stands under the row of a reading. */
function partOf(inputs: readonly string[]): Part | undefined {
  const isOf = (box: RegExp) => inputs.some((path) => box.test(path));
  if (isOf(/target/i)) return 'setting';
  if (isOf(/^ways/)) return 'ways';
  if (!isOf(/^readings/)) return 'setting';
  return readingBox(inputs) === undefined ? 'readings' : undefined;
}

/** The guards of one part. */
export function Guards({ part }: { readonly part: Part }): JSX.Element | null {
  const { results, shown } = sheetView();
  const found = (results?.guards ?? []).filter(
    ({ code, inputs }) =>
      partOf(inputs) === part && (results?.setting.ready === true || code !== 'wideUncertainty'),
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
