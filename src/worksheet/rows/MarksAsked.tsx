/** Asks whether dial readings are marks or thousandths, where they look like it, and writes the lengths if they are. */
import { part } from '../kit/part.tsx';
import { marksOn, thousandthsOn, writeLengths, writeThousandths } from './marks.ts';
import {
  marksButton,
  marksQuestion,
  THOUSANDTHS_QUESTION,
  thousandthsButton,
} from './marks-words.ts';

/** Asked under the first row that it is about, in place of what is wrong with each. */
export const ThousandthsAsked = part((_, sheet) => {
  const rows = thousandthsOn(sheet);
  const [first] = rows;
  return first ? (
    <div class="unit-asked no-print" role="alert">
      <p class="guard is-warn">{THOUSANDTHS_QUESTION}</p>
      <button class="button" type="button" onClick={() => writeThousandths(sheet, rows)}>
        {thousandthsButton(first[1], rows.length)}
      </button>
    </div>
  ) : null;
});

/** The question with its button; empty while there is nothing to ask. */
export const MarksAsked = part((_, sheet) => {
  const marks = marksOn(sheet);
  const graduation = sheet.worksheet()?.rig.graduation;
  const example = marks.find(({ count }) => count !== 0);
  return (
    <div class="marks-asked no-print" aria-live="polite">
      {example && graduation !== undefined && (
        <>
          <p class="guard is-warn">{marksQuestion(graduation, sheet.shown())}</p>
          <button class="button" type="button" onClick={() => writeLengths(sheet, marks)}>
            {marksButton(example, sheet.shown())}
          </button>
        </>
      )}
    </div>
  );
});
