/** What the plan on the sheet reaches, for which bar, dial and torques it was tried, and what would help. */
import type { JSX } from 'preact';
import type { PlanOutcome } from '../../core/plan.ts';
import { THIN_SPACE } from '../../units/format-number.ts';
import { PartLink } from '../kit/PartLink.tsx';
import { part } from '../kit/part.tsx';
import type { PlanAnswer } from '../state/answers.ts';
import type { Shown } from '../state/shown.ts';
import {
  dialName,
  haveSentence,
  PLAN_TROUBLES,
  reachSentence,
  settingTexts,
  settingUnit,
  type TooHigh,
} from '../words/plan-words.ts';
import type { Planned } from './inputs.ts';
import { hasLimit, tooHighOn } from './limit.ts';
import { Offers } from './Offers.tsx';
import { plannerOf } from './planner.ts';
import { plannedOn } from './questions.ts';

const MOST_OFFERS = 6;

const ASSUMED = [
  ['', ' The bar is assumed, because its box above is empty.'],
  [
    ' The dial is assumed, because its box above is empty.',
    ' Both are assumed, because their boxes above are empty.',
  ],
] as const;

function triedFor(planned: Planned, shown: Shown): string {
  const { plan, barIsAssumed, dialIsAssumed } = planned;
  const { quantity, system } = shown;
  const bar = `a bar of ${quantity(plan.gaugeLength, 'length')}`;
  const assumed = ASSUMED[dialIsAssumed ? 1 : 0][barIsAssumed ? 1 : 0];
  const settings = settingTexts(planned, shown);
  const over =
    settings.length === 0
      ? ` It has ${plan.steps} even steps.`
      : ` The ${plan.steps} steps are ${settings.join(', ')}${THIN_SPACE}${settingUnit(shown)}.`;
  return `Tried with ${bar} and ${dialName(plan.graduation, system)}.${assumed}${over}`;
}

/** What stands against the top of the plan; it asks for the limits while none is filled in. */
const Limit = part<{ readonly answer: PlanAnswer | undefined }>(({ answer }, sheet) => {
  const found = tooHighOn(sheet, answer);
  const said = ({ sentence, isStop }: TooHigh) => (
    <p key={sentence} class={`guard is-${isStop ? 'stop' : 'warn'}`}>
      {sentence}
    </p>
  );
  return (
    <>
      {found.filter(({ isStop }) => isStop).map(said)}
      {!hasLimit(sheet) && (
        <p class="guard is-warn">
          Ask what the makers of mill and band allow, and{' '}
          <PartLink to="setting">enter it in part 8</PartLink> before you go out.
        </p>
      )}
      {found.filter(({ isStop }) => !isStop).map(said)}
    </>
  );
});

/** What the sheet has measured already. */
const Have = part<{ readonly outcome: PlanOutcome }>(({ outcome }, sheet) => {
  const measured = sheet.result('measured');
  if (!measured?.ready) return null;
  return <p>{haveSentence(measured.expandedUncertainty / measured.stress, outcome)}</p>;
});

function Answer({ answer }: { readonly answer: PlanAnswer | undefined }): JSX.Element {
  if (!answer) return <p class="plan-says">Trying your plan …</p>;
  if (answer.outcome)
    return (
      <>
        <p class="plan-says">{reachSentence(answer.outcome)}</p>
        <Have outcome={answer.outcome} />
      </>
    );
  return (
    <p class="plan-says">
      Enter the target stress in part 8, or the four numbers of part 1. Then the plan can be tried.
    </p>
  );
}

/** The answer under the boxes of the plan. */
export const Reach = part((_, sheet) => {
  const [planned, { plan, answerTo }] = [plannedOn(sheet), plannerOf(sheet)];
  const questions = plan.value;
  if (typeof planned === 'string') return <p class="refusal">{PLAN_TROUBLES[planned]}</p>;
  if (!planned || !questions) return null;
  const answer = answerTo(questions.own);
  return (
    <div class="plan-reach" aria-live="polite">
      <Limit answer={answer} />
      <Answer answer={answer} />
      <p class="hint">{triedFor(planned, sheet.shown())}</p>
      {(!answer || answer.outcome) && (
        <>
          <h3>What would help most</h3>
          <Offers questions={questions} most={MOST_OFFERS} by="This plan" />
        </>
      )}
    </div>
  );
});
