/** Asks in which unit the numbers of a column are that have none, and writes it. */
import { part } from '../kit/part.tsx';
import { pathOf } from './columns.ts';
import { answerUnit, askedOn } from './unit-asked.ts';
import { ownUnit, unitButton, unitQuestion } from './unit-words.ts';

/** The question with its two answers. */
export const UnitAsked = part((_, sheet) => {
  const asked = askedOn(sheet);
  if (!asked) return null;
  const shown = sheet.shown();
  const first = sheet.text(pathOf(asked.rows[0] ?? 0, asked.cell)).trim();
  return (
    <div class="unit-asked no-print" role="alert">
      <p class="guard is-warn">{unitQuestion(asked, first, shown)}</p>
      {[asked.unit, ownUnit(asked, shown)].map((unit) => (
        <button
          class="button"
          type="button"
          key={unit}
          onClick={() => answerUnit(sheet, asked, unit)}
        >
          {unitButton(unit, first, asked.rows.length)}
        </button>
      ))}
    </div>
  );
});
