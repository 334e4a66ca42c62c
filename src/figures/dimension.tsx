/**
 * Dimension lines and arrows as in a technical drawing (conventions of ISO 129): thin lines, filled
 * arrowheads that end on extension lines, the number above the line.
 * Units: units of the drawing.
 */

/** A filled arrowhead with its tip at (x, y), pointing along `angle` degrees. */
export function ArrowHead({
  x,
  y,
  angle,
  ink = 'ink',
  size = 9,
}: {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  readonly ink?: 'ink' | 'hand' | 'steel';
  readonly size?: number;
}) {
  return (
    <path
      class={`${ink}-fill`}
      d={`M0 0L${-size} ${size / 3.2}V${-size / 3.2}Z`}
      transform={`translate(${x} ${y}) rotate(${angle})`}
    />
  );
}

interface DimensionProps {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly text: string;
  /** Where the extension lines start: the edge that is measured. */
  readonly edge?: number;
  readonly ink?: 'ink' | 'hand' | 'steel';
  readonly id?: string;
  /** On which side the number stands where there is no room between the arrows. */
  readonly side?: 'left' | 'right';
  /** Keeps the number beside and the arrows outside however long it gets, where the room above is taken. */
  readonly beside?: boolean;
}

/** A level dimension line between two edges with its number above; arrows go outside when it is short. */
export function Dimension(props: DimensionProps) {
  const { from, to, y, text, edge, ink = 'ink', id, side = 'right', beside: outside } = props;
  const short = outside || Math.abs(to - from) < 30;
  const line = ink === 'ink' ? 'thin' : `${ink}-line`;
  const middle = (from + to) / 2;
  const [beside, anchor] = side === 'left' ? [from - 28, 'end'] : [to + 28, 'start'];
  return (
    <g data-sym={id}>
      {edge !== undefined && (
        <path class="axis" d={`M${from} ${edge}V${y + 5}M${to} ${edge}V${y + 5}`} />
      )}
      <path class={line} d={short ? `M${from - 22} ${y}H${to + 22}` : `M${from} ${y}H${to}`} />
      <ArrowHead x={from} y={y} angle={short ? 0 : 180} ink={ink} />
      <ArrowHead x={to} y={y} angle={short ? 180 : 0} ink={ink} />
      <text
        class={`halo ${ink}`}
        x={short ? beside : middle}
        y={short ? y + 5 : y - 7}
        text-anchor={short ? anchor : 'middle'}
      >
        {text}
      </text>
    </g>
  );
}
