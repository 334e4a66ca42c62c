/** Rig: the bar with its dial. */
import type { JSX } from 'preact';
import { useContext } from 'preact/hooks';
import { Box } from './Box.tsx';
import { Choice } from './Choice.tsx';
import { Section, Seldom } from './Section.tsx';
import { SheetContext } from './sheet-view.ts';

const SELDOM = ['rig.gaugeLengthHalfWidth', 'rig.repeatability', 'rig.barWeight', 'rig.barHeight'];

/** Part 4. */
export function RigPart(): JSX.Element {
  const { text } = useContext(SheetContext);
  const boxes = (
    <>
      <Box path="rig.gaugeLength" />
      <Box path="rig.graduation" />
      <Box path="rig.readTo" />
      <Choice
        name="dial"
        legend="As the band stretches, the number shown"
        options={[
          ['backwards', 'falls'],
          ['forwards', 'rises'],
        ]}
      />
      <Box path="rig.travelPerTurn" />
      <Choice
        name="bar"
        legend="The bar is of"
        options={[
          ['steel', 'steel'],
          ['aluminium', 'aluminium'],
          ['wood', 'wood'],
        ]}
      />
      <Seldom
        name="Own repeats, weight of the bar"
        open={SELDOM.some((path) => (text.boxes[path] ?? '') !== '')}
      >
        <Box path="rig.gaugeLengthHalfWidth" />
        <Box path="rig.repeatability" />
        <Box path="rig.barWeight" />
        <Box path="rig.barHeight" />
      </Seldom>
    </>
  );
  return <Section id="rig" number={4} title="Rig" boxes={boxes} />;
}
