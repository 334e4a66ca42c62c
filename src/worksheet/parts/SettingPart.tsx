/** Setting: target, limits, other bands, and what the card for the mill says beside the numbers. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { part } from '../kit/part.tsx';
import { Said, Section, WhenOpen } from '../kit/Section.tsx';
import { LateBands, LateSettings, LateWindow } from '../results/late.ts';

const ASKED = ['demands.guideSpan', 'demands.speed', 'demands.power'] as const;

/** How slack and how tight it may be, for who asks whether the target is a good one. */
const Window = part((_, sheet) => {
  const isFilled = ASKED.some((path) => sheet.text(path) !== '');
  return (
    <details class="seldom" open={isFilled}>
      <summary>How slack, how tight? The window</summary>
      {(isFilled || sheet.openParts.value.has('setting')) && <LateWindow />}
    </details>
  );
});

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
          <Window />
          <WhenOpen id="setting" list="bands">
            <LateBands />
          </WhenOpen>
        </>
      }
      results={<LateSettings />}
    />
  );
}
