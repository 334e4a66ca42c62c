/** What to set: the torque for the target by own readings and by the screw alone, and what the dial should show. */
import type { ChainOperands, WorksheetResults } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { Hand, Result, Steel } from '../kit/Result.tsx';
import type { Shown } from '../state/shown.ts';

const Setting = part((_, sheet) => {
  return (
    <Result
      id="setting"
      name="Torque for the target stress"
      felt={false}
      formula={
        <>
          <Hand>M</Hand> ={' '}
          <Hand>
            M<sub>0</sub>
          </Hand>{' '}
          + (<Hand>M</Hand> top −{' '}
          <Hand>
            M<sub>0</sub>
          </Hand>
          ) · <Hand>σ</Hand> target ÷ <Steel>σ</Steel> top
        </>
      }
      outcome={sheet.result('setting')}
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
          'From your own readings: friction, lead and section cancel. Young’s modulus does not, because the target is a stress; it would cancel if the target were a stretch.',
        ],
      })}
    />
  );
});

/** The dial's own number there, for who has not yet taken it off. */
function dialNotes(
  outcome: WorksheetResults['dialSetting'] | undefined,
  quantity: Shown['quantity'],
): readonly string[] {
  if (!outcome?.ready) return [];
  const { dial, wholeTurns } = outcome;
  const turns = wholeTurns === 0 ? '' : `, with ${wholeTurns} in “turns of the hand”`;
  return [
    `If bar and dial are still clamped as for these readings, the dial will show ${quantity(dial, 'stretch')}${turns}.`,
  ];
}

const ExpectedStretch = part((_, sheet) => {
  const [setting, expected] = [sheet.result('setting'), sheet.result('expectedStretch')];
  const isStopped = sheet.result('guards')?.some(({ level }) => level === 'stop') === true;
  const outcome = isStopped && setting?.ready === false ? setting : expected;
  return (
    <Result
      id="expected-stretch"
      name="How far the dial should then move, from the zero of a series"
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
        notes: dialNotes(sheet.result('dialSetting'), quantity),
      })}
    />
  );
});

/** Lead, section and losses as they stand in the torque above the drag. */
const ScrewTorque = part<{ readonly operands: ChainOperands }>(({ operands }, sheet) => {
  const shown = sheet.shown();
  const { lead, area, strandHalfAngle, advantage, efficiency } = operands;
  return (
    <>
      <Hand>{shown.plain(lead, 'thickness')}</Hand> × {shown.plain(area, 'area')}
      {strandHalfAngle !== 0 && ` × ${shown.number(Math.cos(strandHalfAngle))}`} ÷ (π
      {advantage !== 1 && ` × ${shown.number(advantage)}`} × {shown.number(efficiency)})
    </>
  );
});

/** The same torque in the unit in which lead and section give it. */
const aboveDrag = (torque: number, { smallTorque, plain }: Shown) =>
  `Above the no-load torque that is ${smallTorque(torque)}, or ${plain(torque, 'torque')}.`;

const TheorySetting = part((_, sheet) => {
  return (
    <Result
      id="theory-setting"
      name="The same from the screw alone"
      felt={false}
      formula={
        <>
          <Hand>M</Hand> ={' '}
          <Hand>
            M<sub>0</sub>
          </Hand>{' '}
          + <Hand>σ</Hand> target · <Hand>l</Hand> · A · cos β ÷ (π · a · e)
        </>
      }
      outcome={sheet.result('theorySetting')}
      write={({ torque, torqueLow, torqueHigh, operands: o }, shown) => ({
        value: <Hand>{shown.quantity(torque, 'torque')}</Hand>,
        beside: shown.range(torqueLow, torqueHigh, 'torque'),
        arithmetic: (
          <>
            <Hand>{shown.plain(o.dragTorque, 'torque')}</Hand> +{' '}
            <Hand>{shown.plain(o.targetStress, 'stress')}</Hand> × <ScrewTorque operands={o} /> ={' '}
            <Hand>{shown.plain(torque, 'torque')}</Hand>
          </>
        ),
        notes: [
          aboveDrag(torque - o.dragTorque, shown),
          'From the lowest to the highest loss that you typed; collar and wrench are added.',
        ],
      })}
    />
  );
});

const OtherBand = part((_, sheet) => {
  return (
    <Result
      id="other-band"
      name="Torque for the other band"
      felt={false}
      formula={
        <>
          <Hand>M</Hand> ={' '}
          <Hand>
            M<sub>0</sub>
          </Hand>{' '}
          + <Hand>σ</Hand> · <Hand>l</Hand> · A · cos β ÷ (π · a · e own)
        </>
      }
      outcome={sheet.result('otherBand')}
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
            <Hand>{shown.plain(o.targetStress, 'stress')}</Hand> × <ScrewTorque operands={o} /> ={' '}
            <Hand>{shown.plain(torque, 'torque')}</Hand>
          </>
        ),
        notes: [
          aboveDrag(torque - o.dragTorque, shown),
          `On the dial, from the zero of a series: ${shown.quantity(stretch, 'stretch')}.`,
        ],
      })}
    />
  );
});

/** Torque, dial, the screw's own opinion, the other band. */
export const SettingResults = part((_, sheet) => {
  return (
    <>
      <Setting />
      <ExpectedStretch />
      <TheorySetting />
      {sheet.chosen('otherBand.kind') === 'some' && <OtherBand />}
    </>
  );
});
