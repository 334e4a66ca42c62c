/** Setting: target, limits, another band; and the card for the mill. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { Guards } from '../kit/Guards.tsx';
import { Asked, Section } from '../kit/Section.tsx';
import { SettingResults } from './SettingResults.tsx';

/** Part 8. */
export function SettingPart(): JSX.Element {
  return (
    <Section
      id="setting"
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
          <Choice path="otherBand.kind" />
          <Asked path="otherBand.kind" option="some">
            <Box path="otherBand.bodyWidth" />
            <Box path="otherBand.thickness" />
            <Box path="otherBand.targetStress" />
          </Asked>
        </>
      }
      results={
        <>
          <Guards part="setting" />
          <SettingResults />
        </>
      }
    />
  );
}
