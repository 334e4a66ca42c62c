/** What would help a measurement most, sorted, each with what it would bring. */
import { bestFirst } from '../../core/plan.ts';
import { part } from '../kit/part.tsx';
import type { PlanAnswer, PlanQuestion } from '../state/answers.ts';
import { isBetter, offerName, reachText } from '../words/plan-words.ts';
import { plannerOf } from './planner.ts';
import type { PlanQuestions } from './questions.ts';

/** What a question comes to, once it has an outcome. */
export type Reached = PlanAnswer & Required<Pick<PlanAnswer, 'outcome'>>;

interface Props {
  readonly questions: PlanQuestions;
  readonly most: number; // of them shown
}

const isReached = (answer: PlanAnswer | undefined): answer is Reached =>
  answer?.outcome !== undefined;

/** The list; until every change has been tried, it says that it is being worked out. */
export const Offers = part<Props>(({ questions: { own, offers }, most }, sheet) => {
  const { answerTo } = plannerOf(sheet);
  const reached = (question: PlanQuestion) => {
    const answer = answerTo(question);
    return isReached(answer) ? answer.outcome : undefined;
  };
  const now = reached(own);
  const tried = offers.flatMap(({ change, question }) => {
    const outcome = reached(question);
    return outcome ? [{ change, question, outcome }] : [];
  });
  if (!now || tried.length < offers.length) return <p class="hint">Trying out what would help …</p>;
  const better = bestFirst(tried).filter(({ outcome }) => isBetter(outcome, now));
  if (better.length === 0) return <p class="hint">No single change would help much.</p>;
  return (
    <ol class="offers">
      {better.slice(0, most).map(({ change, question, outcome }) => (
        <li key={change}>
          {offerName(change, question.plan, sheet.shown())}: <b>{reachText(outcome)}</b>
        </li>
      ))}
    </ol>
  );
});
