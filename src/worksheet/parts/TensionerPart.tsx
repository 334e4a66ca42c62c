/** What tightens: its losses and its no-load torque or pressure; what it should pass on. */
import type { JSX } from 'preact';
import { LateTensioner } from '../insides/late.ts';
import { part } from '../kit/part.tsx';
import { Inside, Said, Section } from '../kit/Section.tsx';
import { LateEfficiency } from '../results/late.ts';
import { Tightener } from './StartPart.tsx';

const SHORT = {
  unknown: '',
  greased: 'greased',
  dry: 'dry',
  friction: 'friction known',
  efficiency: 'efficiency known',
} as const;
const UNDER = { unknown: '', washer: 'washer', bearing: 'bearing', none: 'no washer' } as const;

const Screw = part((_, sheet) => {
  const words = [
    SHORT[sheet.chosen('tensioner.friction.kind')],
    UNDER[sheet.chosen('tensioner.collar.kind')],
  ];
  return <span class="hand">{words.filter(Boolean).join(', ')}</span>;
});

/** Thread and collar in short, or piston and rod. */
const Kept = part((_, sheet) => (
  <>
    <Tightener />
    {sheet.chosen('tensioner.kind') === 'screw' ? (
      <Screw />
    ) : (
      <Said before="rod " path="tensioner.cylinder.rodDiameter" />
    )}
  </>
));

/** Part 2. */
export function TensionerPart(): JSX.Element {
  return (
    <Section
      id="tensioner"
      says={<Kept />}
      boxes={<Inside id="tensioner" of={LateTensioner} />}
      results={<LateEfficiency />}
    />
  );
}
