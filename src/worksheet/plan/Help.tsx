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
      <p>Wear gloves first: more rows in bare hands warm the bar more, and that bends the line.</p>
      <Offers questions={questions} most={MOST} />
      <p class="hint">Nine of ten such measurements would know the stress so well or better.</p>
    </div>
  );
});
