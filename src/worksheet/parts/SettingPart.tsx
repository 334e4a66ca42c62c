/** Setting: target, limits, other bands, and what the card for the mill says beside the numbers. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { Said, Section, WhenOpen } from '../kit/Section.tsx';
import { LateBands, LateSettings } from '../results/late.ts';

/** Part 8. */
export function SettingPart(): JSX.Element {
  return (
    <Section
      id="setting"
      says={<Said path="target.stress" />}
      boxes={
        <>
          <p class="how">
            Read the torque on the way up, while the handle moves. Past it? Slacken well below and
            come up again. Never go above a maker’s limit.
          </p>
          <Box path="target.stress" />
          <Box path="target.makerLimitStress" />
          <Box path="target.makerLimitWheelForce" />
          <Box path="target.yieldStrength" />
          <WhenOpen id="setting" list="bands">
            <LateBands />
          </WhenOpen>
        </>
      }
      results={<LateSettings />}
    />
  );
}
