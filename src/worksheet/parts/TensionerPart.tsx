/** The screw: losses, collar, no-load torque; what the screw should give back. */
import type { JSX } from 'preact';
import { THREAD_FRICTION } from '../../models/handbook-friction.ts';
import { formatFixed } from '../../units/format-number.ts';
import { Box, BoxInput, BoxTrouble } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { idOf } from '../kit/ids.ts';
import { part } from '../kit/part.tsx';
import { Hand, Result } from '../kit/Result.tsx';
import { Asked, Section, Seldom } from '../kit/Section.tsx';

const usual = (kept: keyof typeof THREAD_FRICTION) => {
  const { low, high } = THREAD_FRICTION[kept];
  return `${formatFixed(low, 2)} to ${formatFixed(high, 2)}`;
};

const SELDOM = ['tensioner.starts', 'tensioner.advantage'] as const;

const Losses = part((_, sheet) => {
  const isFriction = sheet.chosen('tensioner.friction.kind') === 'friction';
  const [low, high] = ['tensioner.friction.low', 'tensioner.friction.high'] as const;
  return (
    <>
      <Choice path="tensioner.friction.kind" />
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
});

const ScrewEfficiency = part((_, sheet) => {
  const hasCollar =
    sheet.chosen('tensioner.collar.kind') === 'collar' &&
    sheet.chosen('tensioner.friction.kind') === 'friction';
  return (
    <Result
      id="screw"
      name="Share of your work that the screw should pass on"
      felt={false}
      formula={
        <>
          e = <Hand>l</Hand> ÷ (2π · torque for a thrust of one)
        </>
      }
      outcome={sheet.result('screw')}
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
          ? ['The range is for the thread alone; the collar’s uncertainty is added.']
          : [],
      })}
    />
  );
});

/** Part 2. */
export function TensionerPart(): JSX.Element {
  const boxes = (
    <>
      <Losses />
      <Choice path="tensioner.collar.kind" />
      <Asked path="tensioner.collar.kind" option="collar">
        <Box path="tensioner.collar.friction" />
        <Box path="tensioner.collar.outerDiameter" />
        <Box path="tensioner.collar.innerDiameter" />
      </Asked>
      <Box path="tensioner.dragTorque" />
      <Box path="tensioner.dragTorqueUncertainty" />
      <Seldom name="More than one start, or a lever" paths={SELDOM} />
    </>
  );
  return <Section id="tensioner" boxes={boxes} results={<ScrewEfficiency />} />;
}
