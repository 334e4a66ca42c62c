/** The wheels: their sizes, the lean of the strands, and the force on them. */
import { Box } from '../kit/Box.tsx';
import { part } from '../kit/part.tsx';
import { Result, Steel } from '../kit/Result.tsx';
import { Said, Section } from '../kit/Section.tsx';

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

/** The wheels. */
export const MillPart = part((_, sheet) => {
  const strands = sheet.result('strands');
  const leans = strands?.ready ? strands.strandHalfAngle !== 0 : strands?.refusal !== undefined;
  return (
    <Section
      id="mill"
      says={<Said path="mill.wheelDiameter1" />}
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
