/** The target and its limits, the window, and the fold of other bands. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { part } from '../kit/part.tsx';
import { WhenOpen } from '../kit/Section.tsx';
import { LateBands, LateWindow } from '../results/late.ts';

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

const How = part((_, sheet) => (
  <p class="how">
    Read the {sheet.shown().load.name} on the way up, {sheet.shown().load.moving}. If you pass it,
    slacken well below and come up again. Never go above a maker’s limit.
  </p>
));

/** All of them. */
export function SettingBoxes(): JSX.Element {
  return (
    <>
      <How />
      <Box path="target.stress" />
      <Box path="target.makerLimitStress" />
      <Box path="target.makerLimitWheelForce" />
      <Box path="target.yieldStrength" />
      <Window />
      <WhenOpen id="setting" list="bands">
        <LateBands />
      </WhenOpen>
    </>
  );
}
