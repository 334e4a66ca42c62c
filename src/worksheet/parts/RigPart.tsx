/** Rig: the bar with its dial. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { Hand, Result, Steel } from '../kit/Result.tsx';
import { Section, Seldom } from '../kit/Section.tsx';
import { sheetView } from '../state/view.ts';

const SELDOM = ['rig.gaugeLengthHalfWidth', 'rig.repeatability', 'rig.barWeight', 'rig.barHeight'];

/** What one graduation comes to: how much a longer bar would be worth. */
function Graduation(): JSX.Element {
  const { results } = sheetView();
  return (
    <Result
      id="graduation"
      name="One graduation is worth"
      formula={
        <>
          <Steel>σ</Steel> = <Hand>E</Hand> · <Hand>one graduation</Hand> ÷ <Hand>L₀</Hand>
        </>
      }
      outcome={results?.graduation}
      write={({ stress, operands: own }, { plain, quantity }) => ({
        value: quantity(stress, 'stress'),
        arithmetic: (
          <>
            <Hand>{plain(own.youngsModulus, 'modulus')}</Hand> ×{' '}
            <Hand>{plain(own.graduation, 'stretch')}</Hand> ÷{' '}
            <Hand>{plain(own.gaugeLength, 'length')}</Hand> ={' '}
            <Steel>{plain(stress, 'stress')}</Steel>
          </>
        ),
        notes: ['A longer bar makes it less: the cheapest way to a better figure.'],
      })}
    />
  );
}

/** Part 4. */
export function RigPart(): JSX.Element {
  const { text } = sheetView();
  const rigBoxes = (
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
  return <Section id="rig" number={4} title="Rig" boxes={rigBoxes} results={<Graduation />} />;
}
