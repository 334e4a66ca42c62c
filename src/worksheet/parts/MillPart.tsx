/** The wheels: their sizes, and the lean of the strands. */

import { LateMill } from '../insides/late.ts';
import { part } from '../kit/part.tsx';
import { Result } from '../kit/Result.tsx';
import { Inside, Said, Section } from '../kit/Section.tsx';

/** The wheels. */
export const MillPart = part((_, sheet) => {
  const isOne = sheet.chosen('mill.strands') === 'one';
  const strands = sheet.result('strands');
  const leans = strands?.ready ? strands.strandHalfAngle !== 0 : strands?.refusal !== undefined;
  return (
    <Section
      id="mill"
      says={isOne ? <span class="hand">one strip</span> : <Said path="mill.wheelDiameter1" />}
      boxes={<Inside id="mill" of={LateMill} />}
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
