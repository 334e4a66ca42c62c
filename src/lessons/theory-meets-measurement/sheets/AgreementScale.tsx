/**
 * The scale of the agreement number: between −1 and 1 the two agree. A mark is where prediction and measurement are, a
 * blue one where the reader's own line is. It takes in every number that the lesson can reach.
 * Units: drawing units; the numbers have none.
 */

import { linearScale } from '../../../figures/scale.ts';
import type { Frame } from '../../../figures/stress-plot/scales.ts';
import { formatNumber } from '../../../units/format-number.ts';

const FURTHEST = 2.5;
const NUMBERS = [-2, -1, 0, 1, 2];

/** An agreement number as it is written, to a hundredth. */
export function agreementText(agreement: number): string {
  return formatNumber(agreement, { decimals: 2 });
}

interface AgreementScaleProps {
  readonly frame: Frame;
  readonly agreement: number;
  readonly mine?: number;
}

/** The scale. */
export function AgreementScale({ frame, agreement, mine }: AgreementScaleProps) {
  const { left, right, top, bottom } = frame;
  const x = linearScale([-FURTHEST, FURTHEST], [left, right]);
  const middle = (top + bottom) / 2;
  return (
    <g data-sym="agreement">
      <rect class="shade-fill" x={x(-1)} y={top} width={x(1) - x(-1)} height={bottom - top} />
      <path class="outline" d={`M${x(-1)} ${top}V${bottom}M${x(1)} ${top}V${bottom}`} />
      <path class="axis" d={`M${left} ${middle}H${right}`} />
      {NUMBERS.map((number) => (
        <text key={number} class="note" x={x(number)} y={bottom + 17} text-anchor="middle">
          {formatNumber(number, { decimals: 0 })}
        </text>
      ))}
      {mine !== undefined && (
        <path
          class="hand-line"
          d={`M${x(mine)} ${top - 4}V${bottom + 4}`}
          data-sym="lineAgreement"
        />
      )}
      <path class="ink-fill" d={`M${x(agreement)} ${middle - 7}l6 7l-6 7l-6 -7Z`} />
    </g>
  );
}
