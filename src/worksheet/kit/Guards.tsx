/** What the core wants told about some part of the sheet: stops in an ink frame, the rest as lines. */

import { readingBox } from '../words/box-refusals.ts';
import { guardSentence } from '../words/guard-words.ts';
import { part as drawn } from './part.tsx';

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
export const Guards = drawn<{ readonly part: Part }>(({ part }, sheet) => {
  const shown = sheet.shown();
  const isSet = sheet.result('setting')?.ready === true;
  const found = (sheet.result('guards') ?? []).filter(
    ({ code, inputs }) => partOf(inputs) === part && (isSet || code !== 'wideUncertainty'),
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
});
