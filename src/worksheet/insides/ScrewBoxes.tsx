/** What the screw loses: in its thread, under its nut or head, and turning empty. */
import type { JSX } from 'preact';
import { screwSpreads } from '../../core/assumptions.ts';
import {
  bearingFriction,
  dryThreadFriction,
  greasedThreadFriction,
  unknownThreadFriction,
  washerFriction,
} from '../../core/worksheet.ts';
import { COLLAR_FRICTION, THREAD_FRICTION } from '../../models/handbook-friction.ts';
import { formatFixed } from '../../units/format-number.ts';
import { Box } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { part } from '../kit/part.tsx';
import { RangeBox } from '../kit/RangeBox.tsx';
import { AskedIf, Seldom } from '../kit/Section.tsx';
import { RingSizes } from './RingSizes.tsx';

const digits = (friction: number) => formatFixed(friction, friction < 0.01 ? 3 : 2);

/** A range of friction in words. */
const between = ({ low, high }: { readonly low: number; readonly high: number }) =>
  `from ${digits(low)} to ${digits(high)}`;

const { bronze, oiled, dry } = THREAD_FRICTION;
const FRICTION_HINT = `Oiled steel in bronze ${between(bronze)}, steel in steel ${between(oiled)}, dry ${between(dry)} (from memory of handbook tables).`;

const ASSUMED = {
  unknown: unknownThreadFriction,
  greased: greasedThreadFriction,
  dry: dryThreadFriction,
};

const Losses = part((_, sheet) => {
  const kind = sheet.chosen('tensioner.friction.kind');
  const known = kind === 'efficiency' ? 'Efficiency' : 'Thread friction';
  const isAsked = kind === 'friction' || kind === 'efficiency';
  return (
    <>
      <Choice path="tensioner.friction.kind" />
      {(kind === 'unknown' || kind === 'greased' || kind === 'dry') && (
        <p class="hint">Thread friction {between(ASSUMED[kind])} is assumed.</p>
      )}
      <AskedIf isAsked={isAsked}>
        <RangeBox
          low="tensioner.friction.low"
          high="tensioner.friction.high"
          name={known}
          hint={kind === 'efficiency' ? 'As 0.3 or 30 %.' : FRICTION_HINT}
        />
      </AskedIf>
    </>
  );
});

const Collar = part((_, sheet) => {
  const kind = sheet.chosen('tensioner.collar.kind');
  return (
    <>
      <Choice path="tensioner.collar.kind" />
      {kind === 'unknown' && (
        <p class="hint">
          Either is assumed: a ball bearing, or a washer of the thread’s size with a friction{' '}
          {between(washerFriction)}.
        </p>
      )}
      {kind === 'bearing' && <p class="hint">A friction {between(bearingFriction)} is assumed.</p>}
      <AskedIf isAsked={kind === 'washer'}>
        <RangeBox
          low="tensioner.collar.frictionLow"
          high="tensioner.collar.frictionHigh"
          name="Friction of the washer"
          hint={`Left empty: ${between(washerFriction)}. One number alone is taken as ±${100 * screwSpreads.collarFriction} %. Greased steel on steel ${between(COLLAR_FRICTION)} (from memory of handbook tables).`}
        />
      </AskedIf>
      <AskedIf isAsked={kind === 'washer' || kind === 'bearing'}>
        <RingSizes isWasher={kind === 'washer'} />
      </AskedIf>
    </>
  );
});

const SELDOM = ['tensioner.wrenchClass', 'tensioner.starts', 'tensioner.advantage'] as const;

/** The boxes of a screw. */
export function ScrewBoxes(): JSX.Element {
  return (
    <>
      <Losses />
      <Collar />
      <Box path="tensioner.dragTorque" />
      <Box path="tensioner.dragTorqueUncertainty" />
      <Seldom name="Your wrench, more than one start, a lever" paths={SELDOM} />
    </>
  );
}
