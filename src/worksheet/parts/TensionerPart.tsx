/** What tightens: its losses and its no-load torque or pressure; what it should pass on. */
import type { JSX } from 'preact';
import { LateTensioner } from '../insides/late.ts';
import { part } from '../kit/part.tsx';
import { Inside, Said, Section } from '../kit/Section.tsx';
import { LateEfficiency } from '../results/late.ts';

const SHORT = {
  unknown: '',
  greased: 'greased',
  dry: 'dry',
  friction: 'friction known',
  efficiency: 'efficiency known',
} as const;
const UNDER = { unknown: '', washer: 'washer', bearing: 'bearing', none: 'no washer' } as const;

/** Thread and collar in short, or the gauge. */
const Kept = part((_, sheet) => {
  if (sheet.chosen('tensioner.kind') === 'cylinder')
    return <Said path="tensioner.cylinder.gaugeTop" />;
  const [thread, under] = [
    SHORT[sheet.chosen('tensioner.friction.kind')],
    UNDER[sheet.chosen('tensioner.collar.kind')],
  ];
  return <span class="hand">{[thread, under].filter(Boolean).join(', ')}</span>;
});

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
