/** Mill and band: wheels, centre distance, section, steel. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { part } from '../kit/part.tsx';
import { Hand, Result, Steel } from '../kit/Result.tsx';
import { Section } from '../kit/Section.tsx';

/** Part 1. */
export const MillPart = part((_, sheet) => {
  const strands = sheet.result('strands');
  const leans = strands?.ready ? strands.strandHalfAngle !== 0 : strands?.refusal !== undefined;
  return (
    <Section
      id="mill"
      number={1}
      title="Mill"
      boxes={
        <>
          <Box path="mill.wheelDiameter1" />
          <Box path="mill.wheelDiameter2" />
          <Box path="mill.centreDistance" />
        </>
      }
      results={
        leans && (
          <Result
            id="strands"
            name="Angle of the strands"
            felt={false}
            formula="β = arcsin((D₁ − D₂) ÷ 2C)"
            outcome={strands}
            write={({ strandHalfAngle }, { quantity, number }) => ({
              value: quantity(strandHalfAngle, 'angle'),
              arithmetic: `the wheel feels 2 × cos β = ${number(2 * Math.cos(strandHalfAngle))} strands`,
            })}
          />
        )
      }
    />
  );
});

const SectionArea = part((_, sheet) => {
  return (
    <Result
      id="section"
      name="Steel in the section, one strand"
      felt={false}
      formula={
        <>
          A = <Hand>w</Hand> · <Hand>t</Hand>
        </>
      }
      outcome={sheet.result('section')}
      write={({ area, operands: { bodyWidth, thickness } }, { plain, quantity }) => ({
        value: quantity(area, 'area'),
        arithmetic: (
          <>
            <Hand>{plain(bodyWidth, 'length')}</Hand> × <Hand>{plain(thickness, 'thickness')}</Hand>{' '}
            = {plain(area, 'area')}
          </>
        ),
      })}
    />
  );
});

/** Part 2. */
export function BandPart(): JSX.Element {
  return (
    <Section
      id="band"
      number={2}
      title="Band"
      boxes={
        <>
          <p class="how">
            Before you measure the band or turn the screw: read <a href="#readings">the caution</a>,
            lock the mill out, put gloves on. Enter the band that you measured. Other bands go in
            part 8.
          </p>
          <Box path="band.widthOverTeeth" />
          <Box path="band.bodyWidth" />
          <Box path="band.thickness" />
          <Choice path="band.thicknessFrom" />
          <Box path="band.youngsModulus" />
          <Box path="band.youngsModulusHalfWidth" />
        </>
      }
      results={<SectionArea />}
    />
  );
}

/** The forces that the measured stress comes to. */
export const Forces = part((_, sheet) => {
  return (
    <Result
      id="forces"
      name="Force on the wheel, both strands"
      formula={
        <>
          <Steel>
            F<sub>w</sub>
          </Steel>{' '}
          = 2 · <Steel>σ</Steel> · A · cos β
        </>
      }
      outcome={sheet.result('forces')}
      write={({ strandForce, wheelForce, operands }, { plain, quantity, number }) => ({
        value: quantity(wheelForce, 'force'),
        beside: `${quantity(strandForce, 'force')} in each strand`,
        arithmetic: (
          <>
            2 × <Steel>{plain(operands.stress, 'stress')}</Steel> × {plain(operands.area, 'area')}
            {operands.strandHalfAngle !== 0 && ` × ${number(Math.cos(operands.strandHalfAngle))}`} ={' '}
            <Steel>{plain(wheelForce, 'force')}</Steel>
          </>
        ),
      })}
    />
  );
});
