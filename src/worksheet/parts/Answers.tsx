/** The four answers of the sheet in one place: what the band carries, what to set, what to set for other bands, whether theory and measurement agree. */
import type { ComponentChildren, JSX } from 'preact';
import type { Outcome, Ready, SettingReach } from '../../core/worksheet.ts';
import { heldOn } from '../compare/held-back.ts';
import type { PartId } from '../folds/sheet-parts.ts';
import { GuardList } from '../kit/Guards.tsx';
import { PartLink } from '../kit/PartLink.tsx';
import { part } from '../kit/part.tsx';
import { Hand, Steel } from '../kit/Result.tsx';
import { LateNoStressLead, LateStressAnswer } from '../results/late.ts';
import {
  type AtTorque,
  carriedBy,
  stressAnswered,
  testsLittle,
  topReading,
} from '../state/carried.ts';
import type { Shown } from '../state/shown.ts';
import type { SheetView } from '../state/view.ts';
import { AGREES, NO_STRESS, QUESTION, TESTS_LITTLE, torqueSaid } from '../words/answer-words.ts';
import { refusalSentence } from '../words/refusal-words.ts';
import {
  bandName,
  beyondWords,
  inOtherUnit,
  notYet,
  reachWords,
  untriedWords,
} from '../words/setting-words.ts';
import { waitingFor } from '../words/waiting-words.ts';

/** Whether the readings give no stress: why, and what to do, is then said once over the answers. */
const givesNone = (sheet: SheetView) => sheet.result('verdict')?.grade === 'none';

interface AnswerProps<Value> {
  readonly about: keyof typeof QUESTION;
  readonly name?: string; // of what is asked about, where several are
  readonly in: PartId; // the part that tells more
  readonly outcome: Outcome<Value> | undefined;
  readonly say: (value: Ready<Value>, shown: Shown) => ComponentChildren;
}

const Answer = part<AnswerProps<unknown>>(({ about, name, in: at, outcome, say }, sheet) => (
  <div class="answer" data-answer={about}>
    <dt>
      <PartLink to={at}>{name || QUESTION[about]}</PartLink>
    </dt>
    {outcome?.ready ? (
      <dd>{say(outcome, sheet.shown())}</dd>
    ) : (
      <dd class="answer-waits">
        {outcome?.refusal &&
          (givesNone(sheet) ? NO_STRESS : refusalSentence(outcome.refusal, sheet.shown()))}
        {outcome &&
          !outcome.refusal &&
          waitingFor(outcome.waitsFor, sheet.troubles().refusals, sheet.shown().row)}
        {!outcome && 'Working it out.'}
      </dd>
    )}
  </div>
)) as <Value>(props: AnswerProps<Value>) => JSX.Element;

/** The stress that the sheet answers with; where nothing is there yet, what it waits for. */
function stressAsked(sheet: SheetView): Outcome<AtTorque> | undefined {
  const answered = stressAnswered(sheet);
  if (answered) return { ready: true, ...answered };
  const [measured, predicted] = [sheet.result('measured'), sheet.result('predicted')];
  if (measured?.ready === false && measured.refusal) return measured;
  return predicted?.ready ? undefined : predicted;
}

const Stress = part((_, sheet) => {
  const measured = sheet.result('measured');
  return (
    <Answer
      about="stress"
      in={measured?.ready ? 'readings' : 'start'}
      outcome={stressAsked(sheet)}
      say={({ stress, low, high, torque }, shown) => (
        <>
          <Steel>{shown.quantity(stress, 'stress')}</Steel>
          <span class="answer-beside">
            {' '}
            {shown.range(low, high, 'stress')} at {torqueSaid(torque, sheet)}
          </span>
        </>
      )}
    />
  );
});

/** Stops and warnings of the sheet, which nobody should have to look for. */
const Warnings = part((_, sheet) => (
  <GuardList
    answer="warnings"
    guards={(sheet.result('guards') ?? []).filter(
      ({ level, code }) => level !== 'note' && !(code === 'missedDialTurn' && givesNone(sheet)),
    )}
  />
));

interface SetTorque extends SettingReach {
  readonly torque: number; // N·m
  readonly beyondReadings?: boolean;
}

interface TorqueProps {
  readonly of: SetTorque;
  readonly shown: Shown;
  readonly place?: number; // of the other band that it is for
}

/** A torque, and the torques that the target may need. */
const Needed = part<TorqueProps>(({ of, shown, place }, sheet) => {
  const { needs } = reachWords(of, shown);
  const top = topReading(sheet);
  const behind = of.beyondReadings
    ? beyondWords(of, top, shown, place)
    : untriedWords(of, top, shown);
  const small = inOtherUnit(of.torque, shown);
  if (sheet.result('verdict')?.grade === 'rough')
    return (
      <>
        roughly <Hand>{needs}</Hand>
        <span class="answer-beside">{behind}</span>
      </>
    );
  return (
    <>
      <Hand>{shown.quantity(of.torque, shown.load.name)}</Hand>
      {small && <span class="answer-beside"> = {small};</span>}
      {of.beyondReadings && !small && ','}
      <span class="answer-beside">
        {' '}
        {needs}
        {behind}
      </span>
    </>
  );
});

/** The same; held back, only what to do first, and above the readings no larger than the words that say so. */
const TorqueAnswer = part<TorqueProps>((needed, sheet) => {
  const { of, shown, place } = needed;
  const held = heldOn(sheet, { beyondReadings: of.beyondReadings === true, place });
  const words = held ? notYet(held, shown) : <Needed {...needed} />;
  return held || of.beyondReadings ? <span class="answer-beside">{words}</span> : words;
});

const sayTorque = (setting: SetTorque, shown: Shown): JSX.Element => (
  <TorqueAnswer of={setting} shown={shown} />
);

type AnyTorque = Outcome<SetTorque> | undefined;

/** The better of two settings that is there; where none is, the one that waits for less. */
const better = (byReadings: AnyTorque, byScrew: AnyTorque): AnyTorque =>
  byReadings?.ready || byReadings?.refusal ? byReadings : byScrew;

const Setting = part((_, sheet) => {
  const band = sheet.text('bandName');
  return (
    <Answer
      about="setting"
      name={band && `What to set for ${band}?`}
      in="setting"
      outcome={better(sheet.result('setting'), sheet.result('theorySetting'))}
      say={sayTorque}
    />
  );
});

const NO_BAND: AnyTorque = { ready: false, waitsFor: ['bands'] };

const Bands = part((_, sheet) => {
  const bands = sheet.result('bands') ?? [];
  if (bands.length === 0)
    return <Answer about="bands" in="setting" outcome={NO_BAND} say={() => null} />;
  return (
    <>
      {bands.map((band, place) => (
        <Answer
          key={place}
          about="bands"
          name={`And for ${bandName(band, place)}?`}
          in="setting"
          outcome={better(band.byReadings, band.byScrew)}
          say={(setting, shown) => <TorqueAnswer of={setting} shown={shown} place={place} />}
        />
      ))}
    </>
  );
});

const Agreement = part((_, sheet) => (
  <Answer
    about="agreement"
    in="compare"
    outcome={sheet.result('agreement')}
    say={({ verdict }) => (
      <>
        {AGREES[verdict]} {testsLittle(sheet) && <span class="answer-beside">{TESTS_LITTLE}</span>}
      </>
    )}
  />
));

/** Whose answers they are, for who comes by a link. */
const OfMill = part((_, sheet) => {
  const label = sheet.text('label');
  return label.trim() ? <p class="answers-of">{label}</p> : null;
});

/** The bars, fetched once there is one. */
const Bars = part((_, sheet) => (carriedBy(sheet).length > 0 ? <LateStressAnswer /> : null));

/** Where the readings give no stress, what to do. */
const Lead = part((_, sheet) => (givesNone(sheet) ? <LateNoStressLead /> : null));

/** The answers with the bars over them. */
export function Answers(): JSX.Element {
  return (
    <section class="answers" id="answers" aria-labelledby="answers-title">
      <h2 id="answers-title">Answers</h2>
      <OfMill />
      <Bars />
      <Lead />
      <Warnings />
      <dl>
        <Stress />
        <Setting />
        <Bands />
        <Agreement />
      </dl>
    </section>
  );
}
