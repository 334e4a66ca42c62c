/**
 * The sawn face of a board, seen edgewise, with a knot: how the cut would wander if the teeth stayed where the push holds
 * them, on the level of the teeth beside it; dashed, with the guides half as far apart. How long the wander is, is drawn,
 * not worked out.
 * Units: SI in the rows; drawing units otherwise.
 */
import type { PushLayout } from './layout.ts';
import type { Row } from './rows.ts';

/** Thickness of the board, m. */
export const BOARD = 0.025;

interface BoardProps {
  readonly row: Row;
  readonly layout: PushLayout;
  readonly rest: number;
}

/** A face that is straight but for a hump. */
function face({ board }: PushLayout, rest: number, high: number): string {
  const knot = (board.left + board.right) / 2;
  const { hump } = board;
  const top = rest - high;
  return `M${board.left} ${rest}H${knot - hump}C${knot - hump / 2} ${rest} ${knot - hump / 2} ${top} ${knot} ${top}S${knot + hump / 2} ${rest} ${knot + hump} ${rest}H${board.right}`;
}

/** One board. */
export function Board({ row, layout, rest }: BoardProps) {
  const { board, perMovement } = layout;
  const { left, right, hump, perThickness } = board;
  const knot = (left + right) / 2;
  const deep = BOARD * perThickness;
  const wander = face(layout, rest, row.wide.teeth * perMovement);
  return (
    <g>
      <path class="shade-fill" d={`${wander}V${rest + deep}H${left}Z`} />
      <path class="thin" d={`M${left} ${rest}V${rest + deep}H${right}V${rest}`} />
      {[0.75, 0.4].map((ring) => (
        <ellipse
          key={ring}
          class="axis"
          cx={knot}
          cy={rest + deep / 2}
          rx={hump * 0.25 * ring}
          ry={(deep / 2) * ring}
        />
      ))}
      <path class="hidden-edge" d={face(layout, rest, row.close.teeth * perMovement)} />
      <path class="steel-line" d={wander} />
    </g>
  );
}
