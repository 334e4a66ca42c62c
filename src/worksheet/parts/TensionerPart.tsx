/** Tensioner: thread, losses, collar, torque with no load; what the screw should give back. */
import type { JSX } from 'preact';
import { THREAD_FRICTION } from '../../models/handbook-friction.ts';
import { formatFixed } from '../../units/format-number.ts';
import { Box, BoxInput, BoxTrouble, idOf } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { Hand, Result } from '../kit/Result.tsx';
import { Asked, Section, Seldom } from '../kit/Section.tsx';
import { NamedThread, OwnThread } from '../kit/Thread.tsx';
import { sheetView } from '../state/view.ts';

const usual = (kept: keyof typeof THREAD_FRICTION) => {
  const { low, high } = THREAD_FRICTION[kept];
  return `${formatFixed(low, 2)} to ${formatFixed(high, 2)}`;
};

function Losses(): JSX.Element {
  const { text } = sheetView();
  const isFriction = text.choices.losses === 'friction';
  const [low, high] = ['tensioner.friction.low', 'tensioner.friction.high'];
  return (
    <>
      <Choice
        name="losses"
        legend="What is believed of the screw’s losses"
        options={[
          ['friction', 'thread friction'],
          ['efficiency', 'efficiency as a whole'],
        ]}
      />
      <div class="field">
        <label for={idOf(low)}>
          <span>
            {isFriction ? 'Thread friction' : 'Efficiency'}
            <span class="visually-hidden">, lowest</span>
          </span>
        </label>
        <div class="field-box is-range">
          <BoxInput path={low} describedBy={`${idOf(low)}-hint`} />
          <span class="unit">to</span>
          <BoxInput
            path={high}
            label={isFriction ? 'Thread friction, highest' : 'Efficiency, highest'}
          />
        </div>
        <p class="hint" id={`${idOf(low)}-hint`}>
          {isFriction
            ? `Oiled steel in bronze ${usual('bronze')}, steel in steel ${usual('oiled')}, dry ${usual('dry')} (from memory of handbook tables).`
            : 'As 0.3 or 30 %.'}
        </p>
        <BoxTrouble path={low} />
        <BoxTrouble path={high} />
      </div>
    </>
  );
}

function ScrewEfficiency(): JSX.Element {
  const { results, text } = sheetView();
  const hasCollar = text.choices.collar === 'collar' && text.choices.losses === 'friction';
  return (
    <Result
      id="screw"
      name="What the screw should give back"
      felt={false}
      formula={
        <>
          e = <Hand>l</Hand> ÷ (2π · torque for a thrust of one)
        </>
      }
      outcome={results?.screw}
      write={({ lead, efficiency, efficiencyLow, efficiencyHigh }, { plain, quantity, range }) => ({
        value: quantity(efficiency, 'percent'),
        beside: range(efficiencyLow, efficiencyHigh, 'percent'),
        arithmetic: (
          <>
            {plain(efficiency, 'percent')} at the middle of the range, with a lead of{' '}
            <Hand>{plain(lead, 'thickness')}</Hand> to a turn
          </>
        ),
        notes: hasCollar
          ? ['The range is that of the thread; the collar’s doubt comes on top.']
          : [],
      })}
    />
  );
}

/** Part 3. */
export function TensionerPart(): JSX.Element {
  const { text } = sheetView();
  const has = (path: string) => (text.boxes[path] ?? '') !== '';
  const boxes = (
    <>
      <Choice
        name="thread"
        legend="Thread of the screw"
        options={[
          ['designation', 'by its name'],
          ['own', 'by its own measures'],
        ]}
      />
      {text.choices.thread === 'designation' && <NamedThread />}
      <Asked when={text.choices.thread === 'own'}>
        <OwnThread />
      </Asked>
      <Losses />
      <Choice
        name="collar"
        legend="Under the screw’s head"
        options={[
          ['none', 'nothing to reckon with'],
          ['collar', 'a washer or bearing'],
        ]}
      />
      <Asked when={text.choices.collar === 'collar'}>
        <Box path="tensioner.collar.friction" />
        <Box path="tensioner.collar.outerDiameter" />
        <Box path="tensioner.collar.innerDiameter" />
      </Asked>
      <Box path="tensioner.dragTorque" />
      <Box path="tensioner.dragTorqueUncertainty" />
      <Seldom
        name="More than one start, or a lever"
        open={has('tensioner.starts') || has('tensioner.advantage')}
      >
        <Box path="tensioner.starts" />
        <Box path="tensioner.advantage" />
      </Seldom>
    </>
  );
  return (
    <Section
      id="tensioner"
      number={3}
      title="Tensioner"
      boxes={boxes}
      results={<ScrewEfficiency />}
    />
  );
}
