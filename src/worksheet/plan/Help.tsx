/** What would help a measurement that is rough or gives no stress, and what each would bring. */
import type { WorksheetGuardCode } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { areMarks } from '../rows/marks.ts';
import { MARKS_FIRST } from '../rows/marks-words.ts';
import { toldGuards } from '../state/told-guards.ts';
import type { SheetView } from '../state/view.ts';
import { Offers } from './Offers.tsx';
import { plannerOf } from './planner.ts';

const MOST = 3;
const OF_ROWS: readonly WorksheetGuardCode[] = ['missedDialTurn', 'oddRow', 'dialFalls'];

/** Of rows that look wrong: what to do about each, for with a wrong row no advice holds. */
function curesOn(sheet: SheetView): readonly string[] {
  if (areMarks(sheet)) return [MARKS_FIRST];
  const wrong = (sheet.result('guards') ?? []).filter(({ code }) => OF_ROWS.includes(code));
  return toldGuards(wrong, sheet.shown()).map(({ sentence }) => sentence);
}

const CuresFirst = ({ cures }: { readonly cures: readonly string[] }) => (
  <div class="advice">
    <h3>Before you measure again</h3>
    {cures.map((cure) => (
      <p key={cure}>{cure}</p>
    ))}
  </div>
);

/** The advice; nothing while bar, dial or the stress at the top are not known. */
export const Help = part((_, sheet) => {
  const { advice, answerTo } = plannerOf(sheet);
  const cures = curesOn(sheet);
  if (cures.length > 0) return <CuresFirst cures={cures} />;
  const questions = advice.value;
  const own = questions && answerTo(questions.own);
  if (!questions || (own && !own.outcome)) return null;
  return (
    <div class="advice">
      <h3>Measure again: what would help most</h3>
      <p>Wear gloves first: bare hands warm the bar with every row, and that bends the line.</p>
      <Offers questions={questions} most={MOST} by="Another measurement like yours" />
      <p class="hint">
        That well or better, nine times out of ten. A plan in part 4 counts its own steps and top.
      </p>
    </div>
  );
});
