/** What to set: the torque for the target by own readings and by the screw alone, what the dial should show, the turns. */

import { FindOutFirst } from '../compare/Checks.tsx';
import { areApart } from '../compare/held-back.ts';
import { beforeByReadings, beforeByScrew } from '../compare/provisional-words.ts';
import { Letter, NoLoad } from '../kit/Pull.tsx';
import { part } from '../kit/part.tsx';
import { Hand, Result, Steel } from '../kit/Result.tsx';
import { aboveDrag, Reach, ScrewFormula, ScrewTorque } from '../kit/SetTorque.tsx';
import type { SheetView } from '../state/view.ts';
import { whichTorque } from '../words/advice-words.ts';
import { dialNotes } from '../words/dial-words.ts';

/** `Torque for the target`, with the band's name where it has one. */
function loadFor({ shown, text }: SheetView): string {
  const name = text('bandName');
  return `${name && `${name}: `}${shown().load.title} for the target`;
}

const Setting = part((_, sheet) => {
  return (
    <Result
      id="setting"
      name={`${loadFor(sheet)}, by your readings`}
      felt={false}
      formula={
        <>
          <Letter /> = <NoLoad /> + (<Letter /> top − <NoLoad />) · <Hand>σ</Hand> target ÷{' '}
          <Steel>σ</Steel> top
        </>
      }
      outcome={sheet.result('setting')}
      write={(setting, shown) => ({
        provisional: beforeByReadings(setting, sheet),
        value: <Hand>{shown.quantity(setting.torque, shown.load.name)}</Hand>,
        beside: <Reach of={setting} shown={shown} />,
        arithmetic: (
          <>
            <Hand>{shown.plain(setting.operands.dragTorque, shown.load.name)}</Hand> + (
            <Hand>{shown.plain(setting.operands.topTorque, shown.load.name)}</Hand> −{' '}
            <Hand>{shown.plain(setting.operands.dragTorque, shown.load.name)}</Hand>) ×{' '}
            <Hand>{shown.plain(setting.operands.targetStress, 'stress')}</Hand> ÷{' '}
            <Steel>{shown.plain(setting.operands.topStress, 'stress')}</Steel> ={' '}
            <Hand>{shown.plain(setting.torque, shown.load.name)}</Hand>
          </>
        ),
        notes: [
          `From your own readings: ${shown.load.name === 'torque' ? 'friction, lead' : 'seal, piston'} and section cancel. Young’s modulus does not, because the target is a stress; it would cancel if the target were a stretch.`,
        ],
      })}
    />
  );
});

const ExpectedStretch = part((_, sheet) => {
  const [setting, expected] = [sheet.result('setting'), sheet.result('expectedStretch')];
  const isStopped = sheet.result('guards')?.some(({ level }) => level === 'stop') === true;
  const outcome = isStopped && setting?.ready === false ? setting : expected;
  return (
    <Result
      id="expected-stretch"
      name="How far the dial should then move from zero tension"
      formula={
        <>
          <Steel>ΔL</Steel> = <Hand>σ</Hand> target · <Hand>L₀</Hand> ÷ <Hand>E</Hand>
        </>
      }
      outcome={outcome}
      write={({ stretch, operands: o }, shown) => ({
        value: shown.quantity(stretch, 'stretch'),
        arithmetic: (
          <>
            <Hand>{shown.plain(o.stress, 'stress')}</Hand> ×{' '}
            <Hand>{shown.plain(o.gaugeLength, 'length')}</Hand> ÷{' '}
            <Hand>{shown.plain(o.youngsModulus, 'modulus')}</Hand> ={' '}
            <Steel>{shown.plain(stretch, 'stretch')}</Steel>
          </>
        ),
        notes: dialNotes(sheet.result('dialSetting'), shown),
      })}
    />
  );
});

const TheorySetting = part((_, sheet) => {
  return (
    <Result
      id="theory-setting"
      name={`${loadFor(sheet)}, by the ${sheet.shown().load.by} alone`}
      felt={false}
      formula={<ScrewFormula />}
      outcome={sheet.result('theorySetting')}
      write={(setting, shown) => ({
        provisional: beforeByScrew(sheet.result('setting'), sheet),
        value: <Hand>{shown.quantity(setting.torque, shown.load.name)}</Hand>,
        beside: <Reach of={setting} shown={shown} />,
        arithmetic: <ScrewTorque of={setting} />,
        notes: [
          aboveDrag(setting, shown),
          `The range holds everything that is not known: ${shown.load.name === 'torque' ? 'friction, washer, wrench' : 'seal, gauge, piston'}, section, ${shown.load.noLoad}.`,
        ],
      })}
    />
  );
});

const Turns = part((_, sheet) => {
  const outcome = sheet.result('turnsSetting');
  if (!outcome?.ready) return null;
  const shown = sheet.shown();
  return (
    <p class="result-note" data-result="turns-setting">
      By turns: tighten to {shown.quantity(outcome.markedTorque, shown.load.name)}, mark the handle
      there, then turn it{' '}
      <Hand>{shown.plusMinus(outcome.turns, outcome.expandedUncertainty, 'turns')}</Hand> more.
      Never count from a slack band.
    </p>
  );
});

const Which = part((_, sheet) => {
  if (areApart(sheet)) return null;
  const [setting, theorySetting] = [sheet.result('setting'), sheet.result('theorySetting')];
  const words = setting && theorySetting && whichTorque({ setting, theorySetting }, sheet.shown());
  return words ? <p class="result-which">{words}</p> : null;
});

/** What to do first, torque by readings and by the screw, which to use, dial and turns. */
export const SettingResults = part(() => (
  <>
    <FindOutFirst />
    <Setting />
    <TheorySetting />
    <Which />
    <ExpectedStretch />
    <Turns />
  </>
));
