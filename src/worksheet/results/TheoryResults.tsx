/** The prediction by screw or cylinder beside the measurement: range, agreement, their own efficiency. */
import type { JSX } from 'preact';
import type { AgreementResult } from '../../core/worksheet.ts';
import { formatFixed } from '../../units/format-number.ts';
import { Checks, Remarks } from '../compare/Checks.tsx';
import { areApart } from '../compare/held-back.ts';
import { OwnEfficiency } from '../kit/OwnEfficiency.tsx';
import { DividedBy, Letter, NoLoad, PerLoad, Times, TimesSection } from '../kit/Pull.tsx';
import { part } from '../kit/part.tsx';
import { Hand, Result, Steel } from '../kit/Result.tsx';
import { predictedSpan, type Route, testsLittle } from '../state/carried.ts';
import type { SheetView } from '../state/view.ts';
import { TESTS_LITTLE, torqueSaid } from '../words/answer-words.ts';
import { nextBoxName } from '../words/assumed-words.ts';
import { AtUse } from './AtUse.tsx';

const VERDICT: Readonly<Record<AgreementResult['verdict'], string>> = {
  agree: 'They agree within their uncertainty',
  measuredHigher: 'They do not agree: you measured more',
  measuredLower: 'They do not agree: you measured less',
};

/** That agreement with a wide prediction tests little, and what would narrow it. */
function wideNotes(sheet: SheetView): readonly string[] {
  const predicted = predictedSpan(sheet);
  if (!predicted || !testsLittle(sheet)) return [];
  const [next] = sheet.result('nextBoxes') ?? [];
  const allowed = sheet.shown().range(predicted.low, predicted.high, 'stress');
  const narrower = next ? ` Fill in “${nextBoxName(next.path)}” to narrow it most.` : '';
  return [`The prediction${atTorque(sheet)} allows anything from ${allowed}.${narrower}`];
}

/** At which torque the two are compared. */
const comparedAt = ({ result }: Pick<SheetView, 'result'>): number | undefined => {
  const predicted = result('predicted');
  return predicted?.ready ? predicted.operands.torque : undefined;
};

function atTorque(sheet: SheetView): string {
  const torque = comparedAt(sheet);
  return torque === undefined ? '' : ` at ${torqueSaid(torque, sheet)}`;
}

const Predicted = part((_, sheet) => {
  const shown = sheet.shown();
  const predicted = sheet.result('predicted');
  const trials = sheet.answers().prediction?.trials;
  return (
    <Result
      id="predicted"
      name={`Stress predicted from the ${shown.load.by}${atTorque(sheet)}`}
      formula={
        <>
          <Steel>σ</Steel> = <PerLoad /> · e · (<Letter /> − <NoLoad />) ÷ (<TimesSection />)
        </>
      }
      outcome={predicted}
      write={(
        { stress, low, high, expandedUncertainty, operands: o },
        { plain, quantity, range, smallLoad, number, load },
      ) => ({
        value: quantity(stress, 'stress'),
        beside: `95 %: ${range(trials?.low ?? low, trials?.high ?? high, 'stress')}`,
        arithmetic: (
          <>
            <DividedBy of={o} /> × {number(o.efficiency)} × (<Hand>{smallLoad(o.torque)}</Hand> −{' '}
            <Hand>{smallLoad(o.dragTorque)}</Hand>) ÷ (<Times of={o} />) ={' '}
            <Steel>{plain(stress, 'stress')}</Steel>
          </>
        ),
        notes: trials
          ? [
              `The range comes from random trials${load.name === 'torque' ? ', and friction makes it lopsided' : ''}. Eₙ uses ${plain(expandedUncertainty, 'stress')} to each side, twice the standard uncertainty.`,
            ]
          : [],
      })}
    />
  );
});

const Agreement = part((_, sheet) => {
  return (
    <Result
      id="agreement"
      name="Do theory and measurement agree?"
      felt={false}
      formula={
        <>
          E<sub>n</sub> = (<Steel>σ</Steel> measured − <Steel>σ</Steel> predicted) ÷ √(U<sub>m</sub>
          ² + U<sub>p</sub>²)
        </>
      }
      outcome={sheet.result('agreement')}
      write={({ agreementNumber, verdict, operands: o }, { plain }) => ({
        value: VERDICT[verdict],
        beside: testsLittle(sheet) ? TESTS_LITTLE : undefined,
        arithmetic: (
          <>
            (<Steel>{plain(o.measured, 'stress')}</Steel> −{' '}
            <Steel>{plain(o.predicted, 'stress')}</Steel>) ÷ √( (
            {plain(o.expandedMeasured, 'stress')})² + ({plain(o.expandedPredicted, 'stress')})²) ={' '}
            {formatFixed(agreementNumber, 2)}
          </>
        ),
        notes: [
          `Both are stresses${atTorque(sheet)}.`,
          'E\u2099 from −1 to 1 counts as agreement.',
          ...wideNotes(sheet),
        ],
      })}
    />
  );
});

/** Both joined; nothing where they disagree, which stands above already. */
const Both = part((_, sheet) => {
  const [measured, predicted] = [sheet.result('measured'), sheet.result('predicted')];
  if (areApart(sheet)) return null;
  return (
    <Result
      id="both"
      name={`Both together${atTorque(sheet)}`}
      formula={
        <>
          <Steel>σ</Steel> = (<Steel>σ</Steel>
          <sub>m</sub> ÷ u<sub>m</sub>² + <Steel>σ</Steel>
          <sub>p</sub> ÷ u<sub>p</sub>²) ÷ (1 ÷ u<sub>m</sub>² + 1 ÷ u<sub>p</sub>²)
        </>
      }
      outcome={sheet.result('both')}
      write={(both, { plain, plusMinus, range }) => ({
        value: plusMinus(both.stress, both.expandedUncertainty, 'stress'),
        beside: `95 %: ${range(Math.max(0, both.low), both.high, 'stress')}`,
        arithmetic: (
          <>
            with u<sub>m</sub> of {measured?.ready && plain(measured.standardUncertainty, 'stress')}{' '}
            and u<sub>p</sub> of{' '}
            {predicted?.ready && plain(predicted.standardUncertainty, 'stress')}:{' '}
            <Steel>{plain(both.stress, 'stress')}</Steel>
          </>
        ),
        notes: [
          'It is only as good as what you know of the friction: use it beside the two, not instead of them.',
          ...(both.joined === 'inFit'
            ? ['The dial alone gives no stress here: the prediction counts as one more reading.']
            : []),
        ],
      })}
    />
  );
});

const AtUseToo = part<{ readonly route: Route }>(({ route }, sheet) => (
  <AtUse route={route} than={comparedAt(sheet)} />
));

/** Prediction, agreement with what to check, both together, own efficiency. */
export function TheoryResults(): JSX.Element {
  return (
    <>
      <AtUseToo route="predicted" />
      <Predicted />
      <Agreement />
      <Remarks />
      <Checks />
      <AtUseToo route="both" />
      <Both />
      <OwnEfficiency />
    </>
  );
}
