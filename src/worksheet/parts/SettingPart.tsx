/** Setting: target, limits, another band; and the card for the mill. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { Guards } from '../kit/Guards.tsx';
import { Asked, Section } from '../kit/Section.tsx';
import { sheetView } from '../state/view.ts';
import { SettingResults } from './SettingResults.tsx';

/** Part 8. */
export function SettingPart(): JSX.Element {
  const { text, results } = sheetView();
  return (
    <Section
      id="setting"
      number={8}
      title="Setting"
      boxes={
        <>
          <p class="how">
            A torque holds only on the way up, read as the handle moves. Past it? Slacken well below
            and come up again. Never above what a maker allows.
          </p>
          <Box path="target.stress" />
          <Box path="target.makerLimitStress" />
          <Box path="target.makerLimitWheelForce" />
          <Box path="target.yieldStrength" />
          <Choice
            name="otherBand"
            legend="Another band for the same mill"
            options={[
              ['none', 'none'],
              ['some', 'yes'],
            ]}
          />
          <Asked when={text.choices.otherBand === 'some'}>
            <Box path="otherBand.bodyWidth" />
            <Box path="otherBand.thickness" />
            <Box path="otherBand.targetStress" />
          </Asked>
        </>
      }
      results={
        <>
          {results && <Guards part="setting" />}
          <SettingResults />
        </>
      }
    />
  );
}
