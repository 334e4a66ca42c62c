/** What the plan on the sheet reaches, for which bar, dial and torques it was tried, and what would help. */
import type { JSX } from 'preact';
import { PartLink } from '../kit/PartLink.tsx';
import { part } from '../kit/part.tsx';
import type { PlanAnswer } from '../state/answers.ts';
import type { Shown } from '../state/shown.ts';
import { PLAN_TROUBLES, reachSentence } from '../words/plan-words.ts';
import type { Planned } from './inputs.ts';
import { hasLimit, limitSentence } from './limit.ts';
import { Offers } from './Offers.tsx';
import { plannerOf } from './planner.ts';
import { plannedOn } from './questions.ts';

const MOST_OFFERS = 6;

function triedFor({ plan, torques, barIsAssumed, dialIsAssumed }: Planned, shown: Shown): string {
  const { quantity, plain, range } = shown;
  const bar = `a bar of ${quantity(plan.gaugeLength, 'length')}`;
  const dial = `a dial graduated to ${plain(plan.graduation, 'stretch')}`;
  const [first, top] = [torques[0], torques.at(-1)];
  const over =
    first === undefined || top === undefined ? '' : `, from ${range(first, top, shown.load.name)}`;
  const assumed = [barIsAssumed && 'gauge length', dialIsAssumed && 'graduation'].filter(Boolean);
  const why =
    assumed.length > 0 ? ` Assumed, as the box above is empty: ${assumed.join(' and ')}.` : '';
  return `Tried with ${bar}, ${dial}, ${plan.steps} steps${over}.${why}`;
}

/** What stands against the top of the plan; it asks for the limits while none is filled in. */
const Limit = part<{ readonly answer: PlanAnswer | undefined }>(({ answer }, sheet) => {
  const sentence = limitSentence(sheet, answer);
  if (sentence) return <p class="guard is-stop">{sentence}</p>;
  if (hasLimit(sheet)) return null;
  return (
    <p class="guard is-warn">
      What do the makers of mill and band allow?{' '}
      <PartLink to="setting">Fill it in in part 8</PartLink> before you go out.
    </p>
  );
});

interface SaidProps {
  readonly answer: PlanAnswer | undefined;
  readonly shown: Shown;
}

function Answer({ answer, shown }: SaidProps): JSX.Element {
  if (!answer) return <p class="plan-says">Trying the plan out …</p>;
  const { outcome, stressAtTop } = answer;
  if (!outcome)
    return (
      <p class="plan-says">
        Fill in the target stress, or the four numbers of part 1, so that the stress at the top is
        known.
      </p>
    );
  return (
    <>
      <p class="plan-says">{reachSentence(outcome)}</p>
      {stressAtTop !== undefined && (
        <p class="hint">At the top the band would carry {shown.quantity(stressAtTop, 'stress')}.</p>
      )}
    </>
  );
}

/** The answer under the boxes of the plan. */
export const Reach = part((_, sheet) => {
  const [planned, { plan, answerTo }] = [plannedOn(sheet), plannerOf(sheet)];
  const questions = plan.value;
  if (typeof planned === 'string') return <p class="refusal">{PLAN_TROUBLES[planned]}</p>;
  if (!planned || !questions) return null;
  const answer = answerTo(questions.own);
  const shown = sheet.shown();
  return (
    <div class="plan-reach" aria-live="polite">
      <Limit answer={answer} />
      <Answer answer={answer} shown={shown} />
      <p class="hint">{triedFor(planned, shown)}</p>
      {(!answer || answer.outcome) && (
        <>
          <h3>What would help most</h3>
          <Offers questions={questions} most={MOST_OFFERS} />
        </>
      )}
    </div>
  );
});
