/** Setting: target, limits, other bands, and what the card for the mill says beside the numbers. */
import type { JSX } from 'preact';
import { LateSetting } from '../insides/late.ts';
import { Inside, Said, Section } from '../kit/Section.tsx';
import { LateSettings } from '../results/late.ts';

/** Part 8. */
export function SettingPart(): JSX.Element {
  return (
    <Section
      id="setting"
      says={<Said path="target.stress" />}
      boxes={<Inside id="setting" of={LateSetting} />}
      results={<LateSettings />}
    />
  );
}
