/** What would help a measurement most, sorted, each with what it would bring. */
import { bestFirst } from '../../core/plan.ts';
import { part } from '../kit/part.tsx';
import type { PlanQuestion } from '../state/answers.ts';
import { besideSentence, isBetter, offerName, reachText } from '../words/plan-words.ts';
import { plannerOf } from './planner.ts';
import type { PlanQuestions } from './questions.ts';

interface Props {
  readonly questions: PlanQuestions;
  readonly most: number; // of them shown
  readonly by: string; // what is to be made better
}

/** The list of what has been tried so far; it says so while more is being tried. */
export const Offers = part<Props>(({ questions: { own, offers }, most, by }, sheet) => {
  const { answerTo } = plannerOf(sheet);
  const reached = (question: PlanQuestion) => answerTo(question)?.outcome;
  const now = reached(own);
  const tried = offers.flatMap(({ change, question }) => {
    const outcome = reached(question);
    return outcome ? [{ change, question, outcome }] : [];
  });
  const isDone = now !== undefined && tried.length === offers.length;
  const better = now ? bestFirst(tried).filter(({ outcome }) => isBetter(outcome, now)) : [];
  return (
    <>
      {now && better.length > 0 && <p class="offers-beside">{besideSentence(now, by)}</p>}
      {better.length > 0 && (
        <ol class="offers">
          {better.slice(0, most).map(({ change, question, outcome }) => (
            <li key={change}>
              {offerName(change, question.plan, sheet.shown())}: <b>{reachText(outcome)}</b>
            </li>
          ))}
        </ol>
      )}
      {!isDone && <p class="hint">Trying what would help …</p>}
      {isDone && better.length === 0 && <p class="hint">No single change would help much.</p>}
    </>
  );
});
