/** What would help a measurement that is rough or gives no stress, and what each would bring. */
import { part } from '../kit/part.tsx';
import { Offers } from './Offers.tsx';
import { plannerOf } from './planner.ts';

const MOST = 3;

/** The advice; nothing while bar, dial or the stress at the top are not known. */
export const Help = part((_, sheet) => {
  const { advice, answerTo } = plannerOf(sheet);
  const questions = advice.value;
  const own = questions && answerTo(questions.own);
  if (!questions || (own && !own.outcome)) return null;
  return (
    <div class="advice">
      <h3>Measure again: what would help most</h3>
      <p>Wear gloves first: bare hands warm the bar with every row, and that bends the line.</p>
      <Offers questions={questions} most={MOST} by="Readings like yours" />
      <p class="hint">
        That well or better, nine times out of ten. A plan in part 4 counts its own steps and top.
      </p>
    </div>
  );
});
