/** What to set: the torque for the target by own readings and by the screw alone, and what the dial should show. */
import type { JSX } from 'preact';
import type { WorksheetResults } from '../../core/worksheet.ts';
import { Hand, Result, Steel } from './Result.tsx';
import { sheetView } from './sheet-view.ts';
import type { Shown } from './shown.ts';

function Setting(): JSX.Element {
  const { results } = sheetView();
  return (
    <Result
      id="setting"
      name="Torque for the target stress"
      felt={false}
      formula={
        <>
          <Hand>M</Hand> = <Hand>M₀</Hand> + (<Hand>M</Hand> top − <Hand>M₀</Hand>) · <Hand>σ</Hand>{' '}
          target ÷ <Steel>σ</Steel> top
        </>
      }
      outcome={results?.setting}
      write={(setting, { plain, quantity, plusMinus }) => ({
        value: <Hand>{quantity(setting.torque, 'torque')}</Hand>,
        beside: (
          <>
            gives <Steel>{plusMinus(setting.stress, setting.expandedUncertainty, 'stress')}</Steel>
          </>
        ),
        arithmetic: (
          <>
            <Hand>{plain(setting.operands.dragTorque, 'torque')}</Hand> + (
            <Hand>{plain(setting.operands.topTorque, 'torque')}</Hand> −{' '}
            <Hand>{plain(setting.operands.dragTorque, 'torque')}</Hand>) ×{' '}
            <Hand>{plain(setting.operands.targetStress, 'stress')}</Hand> ÷{' '}
            <Steel>{plain(setting.operands.topStress, 'stress')}</Steel> ={' '}
            <Hand>{plain(setting.torque, 'torque')}</Hand>
          </>
        ),
        notes: [
          'By your own readings: friction, lead and section drop out. Young’s modulus does not: the target is a stress. It would drop out only for a target as stretch.',
        ],
      })}
    />
  );
}

/** The dial's own number there, for who has not yet taken it off. */
function dialNotes(
  outcome: WorksheetResults['dialSetting'] | undefined,
  quantity: Shown['quantity'],
): readonly string[] {
  if (!outcome?.ready) return [];
  const { dial, wholeTurns } = outcome;
  const turns = wholeTurns === 0 ? '' : `, with ${wholeTurns} in “turns of the hand”`;
  return [
    `As long as bar and dial stay clamped as for these readings, the dial itself will show ${quantity(dial, 'stretch')}${turns}.`,
  ];
}

function ExpectedStretch(): JSX.Element {
  const { results } = sheetView();
  const stopped = results?.guards.some(({ level }) => level === 'stop') ?? false;
  const outcome =
    stopped && results && !results.setting.ready ? results.setting : results?.expectedStretch;
  return (
    <Result
      id="expected-stretch"
      name="Stretch the gauge length should then have, from no tension"
      formula={
        <>
          <Steel>ΔL</Steel> = <Hand>σ</Hand> target · <Hand>L₀</Hand> ÷ <Hand>E</Hand>
        </>
      }
      outcome={outcome}
      write={({ stretch, operands: o }, { plain, quantity }) => ({
        value: quantity(stretch, 'stretch'),
        arithmetic: (
          <>
            <Hand>{plain(o.stress, 'stress')}</Hand> × <Hand>{plain(o.gaugeLength, 'length')}</Hand>{' '}
            ÷ <Hand>{plain(o.youngsModulus, 'modulus')}</Hand> ={' '}
            <Steel>{plain(stretch, 'stretch')}</Steel>
          </>
        ),
        notes: dialNotes(results?.dialSetting, quantity),
      })}
    />
  );
}

function TheorySetting(): JSX.Element {
  const { results } = sheetView();
  return (
    <Result
      id="theory-setting"
      name="The same by the screw alone"
      felt={false}
      formula={
        <>
          <Hand>M</Hand> = <Hand>M₀</Hand> + <Hand>σ</Hand> target · <Hand>l</Hand> · A · cos β ÷ (π
          · a · e)
        </>
      }
      outcome={results?.theorySetting}
      write={({ torque, torqueLow, torqueHigh, operands: o }, shown) => ({
        value: <Hand>{shown.quantity(torque, 'torque')}</Hand>,
        beside: shown.range(torqueLow, torqueHigh, 'torque'),
        arithmetic: (
          <>
            <Hand>{shown.plain(o.dragTorque, 'torque')}</Hand> +{' '}
            <Hand>{shown.plain(o.targetStress, 'stress')}</Hand> ×{' '}
            <Hand>{shown.plain(o.lead, 'thickness')}</Hand> × {shown.plain(o.area, 'area')}
            {o.strandHalfAngle !== 0 && ` × ${shown.number(Math.cos(o.strandHalfAngle))}`} ÷ (π
            {o.advantage !== 1 && ` × ${shown.number(o.advantage)}`} × {shown.number(o.efficiency)})
            = <Hand>{shown.plain(torque, 'torque')}</Hand>
          </>
        ),
        notes: [
          `Above the drag that is ${shown.smallTorque(torque - o.dragTorque)}, or ${shown.plain(torque - o.dragTorque, 'torque')}.`,
          'Over the range of losses believed.',
        ],
      })}
    />
  );
}

function OtherBand(): JSX.Element {
  const { results } = sheetView();
  return (
    <Result
      id="other-band"
      name="Torque for the other band"
      felt={false}
      formula={
        <>
          <Hand>M</Hand> = <Hand>M₀</Hand> + <Hand>σ</Hand> · <Hand>l</Hand> · A · cos β ÷ (π · a ·
          e own)
        </>
      }
      outcome={results?.otherBand}
      write={({ torque, stress, expandedUncertainty, stretch, operands: o }, shown) => ({
        value: <Hand>{shown.quantity(torque, 'torque')}</Hand>,
        beside: (
          <>
            gives <Steel>{shown.plusMinus(stress, expandedUncertainty, 'stress')}</Steel>
          </>
        ),
        arithmetic: (
          <>
            <Hand>{shown.plain(o.dragTorque, 'torque')}</Hand> +{' '}
            <Hand>{shown.plain(o.targetStress, 'stress')}</Hand> ×{' '}
            <Hand>{shown.plain(o.lead, 'thickness')}</Hand> × {shown.plain(o.area, 'area')} ÷ (π ×{' '}
            {shown.number(o.efficiency)}) = <Hand>{shown.plain(torque, 'torque')}</Hand>
          </>
        ),
        notes: [`On the dial, from zero: ${shown.quantity(stretch, 'stretch')}.`],
      })}
    />
  );
}

/** Torque, dial, the screw's own opinion, the other band. */
export function SettingResults(): JSX.Element {
  const { text } = sheetView();
  return (
    <>
      <Setting />
      <ExpectedStretch />
      <TheorySetting />
      {text.choices.otherBand === 'some' && <OtherBand />}
    </>
  );
}
