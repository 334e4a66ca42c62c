/** Rig: the bar with its dial. */
import type { JSX } from 'preact';
import { LateRig } from '../insides/late.ts';
import { Inside, Said, Section } from '../kit/Section.tsx';
import { LateGraduation } from '../results/late.ts';

/** Part 4. */
export function RigPart(): JSX.Element {
  return (
    <Section
      id="rig"
      says={<Said path="rig.gaugeLength" />}
      boxes={<Inside id="rig" of={LateRig} />}
      results={<LateGraduation />}
    />
  );
}
