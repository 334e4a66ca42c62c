/** An upright dimension line between two levels, its number beside it; arrows go outside when it is short. Drawing units. */
import { ArrowHead } from '../../../figures/dimension.tsx';

interface UprightDimensionProps {
  /** The lower and the upper level; upper is the smaller number. */
  readonly lower: number;
  readonly upper: number;
  readonly x: number;
  readonly text: string;
  /** Where the extension lines start: the edge that is measured. */
  readonly edge: number;
  readonly ink?: 'ink' | 'hand' | 'steel';
  readonly id?: string;
}

const SHORT = 30;
const OUTSIDE = 22;

/** The dimension, its number to the right at half height. */
export function UprightDimension(props: UprightDimensionProps) {
  const { lower, upper, x, text, edge, ink = 'ink', id } = props;
  const short = lower - upper < SHORT;
  const line = ink === 'ink' ? 'thin' : `${ink}-line`;
  const [top, bottom] = short ? [upper - OUTSIDE, lower + OUTSIDE] : [upper, lower];
  return (
    <g data-sym={id}>
      <path class="axis" d={`M${edge} ${upper}H${x + 5}M${edge} ${lower}H${x + 5}`} />
      <path class={line} d={`M${x} ${top}V${bottom}`} />
      <ArrowHead x={x} y={upper} angle={short ? 90 : -90} ink={ink} />
      <ArrowHead x={x} y={lower} angle={short ? -90 : 90} ink={ink} />
      <text class={`halo ${ink}`} x={x + 9} y={(upper + lower) / 2 + 5}>
        {text}
      </text>
    </g>
  );
}
