/** What the readings come to: zero, stretch, stress. */
import type { JSX } from 'preact';
import { largestUnnoticedTilt } from '../../core/worksheet.ts';
import { Advice } from '../kit/Advice.tsx';
import { part } from '../kit/part.tsx';
import { Hand, MoreResults, Result, Steel } from '../kit/Result.tsx';
import { Stiffness } from '../kit/Stiffness.tsx';
import { TurnsLead } from '../rows/TurnsLead.tsx';
import { topReading } from '../state/carried.ts';
import { torqueSaid } from '../words/answer-words.ts';
import { roughSentence, VERDICTS } from '../words/verdict-words.ts';
import { AtUse } from './AtUse.tsx';

const REPEATS = {
  measured: 'as you measured',
  repeats: 'from rows that repeat one load',
  default: 'assumed, because the rows have fewer than four repeats',
} as const;

const Zero = part((_, sheet) => {
  const shown = sheet.shown();
  const series = sheet.result('series');
  const repeats = series?.ready
    ? [
        `The dial repeats to ${shown.plain(series.repeatability, 'stretch')}, ${REPEATS[series.repeatabilityFrom]}.`,
      ]
    : [];
  return (
    <Result
      id="zero"
      name="Where stretching begins, counted from the first reading"
      formula={
        <>
          <Steel>z</Steel> = straight part extended back to the {shown.load.noLoad}
        </>
      }
      outcome={sheet.result('zero')}
      write={({ zero, low, high, probabilityNoToe }, { plain, quantity, range, number }) => ({
        value: quantity(zero, 'stretch'),
        beside: `95 %: ${range(low, high, 'stretch')}`,
        arithmetic: <Steel>{plain(zero, 'stretch')}</Steel>,
        notes: [
          ...repeats,
          `Chance that the band was straight from the start: ${number(100 * probabilityNoToe, 2)} %.`,
        ],
      })}
    />
  );
});

const Stretch = part((_, sheet) => {
  const shown = sheet.shown();
  const zero = sheet.result('zero');
  const outcome = zero?.ready ? { ready: true as const, ...zero.stretch } : zero;
  const top = zero?.ready ? ` at ${shown.quantity(zero.stretch.topTorque, shown.load.name)}` : '';
  return (
    <Result
      id="stretch"
      name={`Stretch${top}`}
      formula={
        <>
          <Steel>ΔL</Steel> = rise of the straight part from no load to the top
        </>
      }
      outcome={outcome}
      write={({ stretch, low, high }, { plain, quantity, range }) => ({
        value: quantity(stretch, 'stretch'),
        beside: `95 %: ${range(low, high, 'stretch')}`,
        arithmetic: <Steel>{plain(stretch, 'stretch')}</Steel>,
      })}
    />
  );
});

const Stress = part((_, sheet) => {
  const shown = sheet.shown();
  const measured = sheet.result('measured');
  const top = measured?.ready ? ` at ${torqueSaid(measured.topTorque, sheet)}` : '';
  const trials = sheet.wantsTrials.value ? sheet.answers().stress : undefined;
  const byTrials = trials ? shown.range(trials.low, trials.high, 'stress') : 'wait a moment';
  return (
    <Result
      id="stress"
      name={`Stress in the band${top}`}
      formula={
        <>
          <Steel>σ</Steel> = <Hand>E</Hand> · <Steel>ΔL</Steel> ÷ (<Hand>L₀</Hand> · f<sub>a</sub>)
        </>
      }
      outcome={measured}
      onWorking={(isOpen) => {
        sheet.wantsTrials.value = isOpen;
      }}
      write={(result, { plain, plusMinus, range, number, quantity }) => ({
        value: plusMinus(result.stress, result.expandedUncertainty, 'stress'),
        beside: `95 %: ${range(Math.max(0, result.low), result.high, 'stress')}`,
        arithmetic: (
          <>
            <Hand>{plain(result.operands.youngsModulus, 'modulus')}</Hand> ×{' '}
            <Steel>{plain(result.operands.stretch, 'stretch')}</Steel> ÷ (
            <Hand>{plain(result.operands.gaugeLength, 'length')}</Hand> ×{' '}
            {number(result.operands.misalignment)}) ={' '}
            <Steel>{plain(result.stress, 'stress')}</Steel>, ± {number(result.coverageFactor, 3)} ×{' '}
            {plain(result.standardUncertainty, 'stress')}
          </>
        ),
        notes: [
          `fₐ allows for a bar up to ${quantity(largestUnnoticedTilt, 'angle')} out of line.`,
          `The uncertainty is the standard uncertainty times ${number(result.coverageFactor, 3)}, so 95 % of such intervals contain the true value.`,
          `By random trials: ${byTrials}.`,
        ],
      })}
    />
  );
});

const StressAtUse = part((_, sheet) => <AtUse route="measured" than={topReading(sheet)} />);

/** The one verdict on the measurement, with its reasons where it is rough. */
const Verdict = part((_, sheet) => {
  const verdict = sheet.result('verdict');
  if (!verdict || verdict.grade === 'waiting') return null;
  return (
    <>
      <p class="verdict" data-result="verdict">
        <strong>The measurement is {VERDICTS[verdict.grade]}.</strong>{' '}
        {verdict.reasons.map((reason) => roughSentence(reason)).join(' ')}
      </p>
      <TurnsLead />
    </>
  );
});

/** The forces that the measured stress comes to. */
const Forces = part((_, sheet) => {
  const isOne = sheet.chosen('mill.strands') === 'one';
  return (
    <Result
      id="forces"
      name={isOne ? 'Force on the strip' : 'Force on the wheel, both strands'}
      formula={
        <>
          <Steel>
            F<sub>w</sub>
          </Steel>{' '}
          = {!isOne && '2 · '}
          <Steel>σ</Steel> · A{!isOne && ' · cos β'}
        </>
      }
      outcome={sheet.result('forces')}
      write={({ strandForce, wheelForce, operands }, { plain, quantity, number }) => ({
        value: quantity(wheelForce, 'force'),
        beside: isOne ? undefined : `${quantity(strandForce, 'force')} in each strand`,
        arithmetic: (
          <>
            {!isOne && '2 × '}
            <Steel>{plain(operands.stress, 'stress')}</Steel> × {plain(operands.area, 'area')}
            {operands.strandHalfAngle !== 0 && ` × ${number(Math.cos(operands.strandHalfAngle))}`} ={' '}
            <Steel>{plain(wheelForce, 'force')}</Steel>
          </>
        ),
      })}
    />
  );
});

/** Zero, stretch, stress, pull, stiffness. */
export function StressResults(): JSX.Element {
  return (
    <>
      <Verdict />
      <StressAtUse />
      <Stress />
      <Advice />
      <MoreResults name="Stretch, zero, force">
        <Stretch />
        <Zero />
        <Forces />
        <Stiffness />
      </MoreResults>
    </>
  );
}
