/** The four answers of the sheet in one place: what the band carries, what to set, what to set for other bands, whether theory and measurement agree. */
import type { ComponentChildren, JSX } from 'preact';
import type { Outcome, Ready } from '../../core/worksheet.ts';
import { PartLink } from '../kit/PartLink.tsx';
import { part } from '../kit/part.tsx';
import { Hand, Steel } from '../kit/Result.tsx';
import { StressBar, scaleOf } from '../kit/StressBars.tsx';
import { carriedBy, type Span } from '../state/carried.ts';
import type { PartId } from '../state/sheet-parts.ts';
import type { Shown } from '../state/shown.ts';
import { AGREES, QUESTION, ROUTE } from '../words/answer-words.ts';
import { refusalSentence } from '../words/refusal-words.ts';
import { waitingFor } from '../words/waiting-words.ts';

interface AnswerProps<Value> {
  readonly about: keyof typeof QUESTION;
  readonly in: PartId; // the part that tells more
  readonly outcome: Outcome<Value> | undefined;
  readonly say: (value: Ready<Value>, shown: Shown) => ComponentChildren;
}

const Answer = part<AnswerProps<unknown>>(({ about, in: at, outcome, say }, sheet) => (
  <div class="answer" data-answer={about}>
    <dt>
      <PartLink to={at}>{QUESTION[about]}</PartLink>
    </dt>
    {outcome?.ready ? (
      <dd>{say(outcome, sheet.shown())}</dd>
    ) : (
      <dd class="answer-waits">
        {outcome?.refusal
          ? refusalSentence(outcome.refusal, sheet.shown())
          : waitingFor(outcome?.waitsFor ?? [], sheet.troubles().refusals)}
      </dd>
    )}
  </div>
)) as <Value>(props: AnswerProps<Value>) => JSX.Element;

const spanText = ({ low, high }: Span, shown: Shown) => shown.range(low, high, 'stress');

/** The bars of every route that is there, one under the other on one scale. */
const Bars = part((_, sheet) => {
  const [carried, shown] = [carriedBy(sheet), sheet.shown()];
  const target = sheet.worksheet()?.target.stress;
  const most = scaleOf([...carried.map(([, { high }]) => high), target ?? 0]);
  return (
    <div class="bars">
      {carried.map(([route, span, torque]) => (
        <div class="bar-row" key={route} data-route={route}>
          <p>
            {ROUTE[route]} <Steel>{spanText(span, shown)}</Steel>
            <span class="bar-at"> at {shown.quantity(torque, 'torque')}</span>
          </p>
          <StressBar span={span} most={most} target={target} isFaint={route === 'predicted'} />
        </div>
      ))}
    </div>
  );
});

const Stress = part((_, sheet) => {
  const measured = sheet.result('measured');
  const predicted = sheet.result('predicted');
  const outcome: Outcome<{ readonly stress: number }> | undefined =
    measured?.ready || measured?.refusal ? measured : predicted;
  return (
    <Answer
      about="stress"
      in={measured?.ready ? 'readings' : 'start'}
      outcome={outcome}
      say={({ stress }, { quantity }) => <Steel>{quantity(stress, 'stress')}</Steel>}
    />
  );
});

const Setting = part((_, sheet) => {
  const [own, screw] = [sheet.result('setting'), sheet.result('theorySetting')];
  const outcome: Outcome<{ readonly torque: number }> | undefined =
    own?.ready || !screw?.ready ? own : screw;
  return (
    <Answer
      about="setting"
      in="setting"
      outcome={outcome}
      say={({ torque }, { quantity }) => <Hand>{quantity(torque, 'torque')}</Hand>}
    />
  );
});

const Bands = part((_, sheet) => (
  <Answer
    about="bands"
    in="setting"
    outcome={sheet.result('otherBand')}
    say={({ torque }, { quantity }) => <Hand>{quantity(torque, 'torque')}</Hand>}
  />
));

const Agreement = part((_, sheet) => (
  <Answer
    about="agreement"
    in="compare"
    outcome={sheet.result('agreement')}
    say={({ verdict }) => AGREES[verdict]}
  />
));

/** The answers with the bars over them. */
export function Answers(): JSX.Element {
  return (
    <section class="answers" id="answers" aria-labelledby="answers-title">
      <h2 id="answers-title">Answers</h2>
      <Bars />
      <dl>
        <Stress />
        <Setting />
        <Bands />
        <Agreement />
      </dl>
    </section>
  );
}
