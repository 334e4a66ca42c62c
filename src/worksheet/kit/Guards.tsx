/** What the core wants told about some part of the sheet: stops in an ink frame, the rest as lines. */

import type { WorksheetGuard } from '../../core/worksheet.ts';
import { toldGuards } from '../state/told-guards.ts';
import { readingBox } from '../words/box-refusals.ts';
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

/** Guards as a list, each sentence once. */
export const GuardList = drawn<{
  readonly guards: readonly WorksheetGuard[];
  readonly answer?: string; // where the list is an answer, which
}>(({ guards, answer }, sheet) => {
  const bandNames = sheet.result('bands')?.map(({ name }) => name);
  const told = toldGuards(guards, sheet.shown(), bandNames);
  const levels = new Map(told.map(({ guard, sentence }) => [sentence, guard.level]));
  if (levels.size === 0) return null;
  return (
    <ul class="guards" data-answer={answer}>
      {[...levels].map(([sentence, level]) => (
        <li key={sentence} class={`guard is-${level}`}>
          {sentence}
        </li>
      ))}
    </ul>
  );
});

/** The guards of one part. */
export const Guards = drawn<{ readonly part: Part }>(({ part }, sheet) => {
  const isSet = sheet.result('setting')?.ready === true;
  const guards = (sheet.result('guards') ?? []).filter(
    ({ code, inputs }) => partOf(inputs) === part && (isSet || code !== 'wideUncertainty'),
  );
  return <GuardList guards={guards} />;
});
