/** Small parts of the rig's drawing: the number of a part with its leader, a rectangle about the axis, a break. Drawing units. */
import type { RigLayout } from './layout.ts';

interface NumberedProps {
  readonly part: number;
  readonly x: number;
  readonly y: number;
  /** The place on the part where its leader ends in a dot. */
  readonly to: readonly [x: number, y: number];
}

/** A part's number with its leader (conventions of ISO 6433). */
export function Numbered({ part, x, y, to: [toX, toY] }: NumberedProps) {
  return (
    <g>
      <path class="thin" d={`M${x} ${y + 4}L${toX} ${toY}`} />
      <circle class="ink-fill" cx={toX} cy={toY} r="2.2" />
      <text class="halo item" x={x} y={y} text-anchor="middle">
        {part}
      </text>
    </g>
  );
}

interface AboutProps {
  readonly layout: RigLayout;
  /** Along the rig, m. */
  readonly from: number;
  readonly to: number;
  readonly axis: number;
  /** Across it, m from the axis, downwards. */
  readonly top: number;
  readonly bottom: number;
  readonly ink?: string;
}

/** A part as a rectangle, by its sizes. */
export function About(props: AboutProps) {
  const { layout, from, to, axis, top, bottom, ink = 'outline paper-fill' } = props;
  const { along, perMeter } = layout;
  return (
    <rect
      class={ink}
      x={along(from)}
      y={axis + top * perMeter}
      width={along(to) - along(from)}
      height={(bottom - top) * perMeter}
    />
  );
}

/** Where a long part is drawn shorter: a zigzag across all of it (convention of ISO 128). */
export function Break({ x, from, to }: { x: number; from: number; to: number }) {
  const middle = (from + to) / 2;
  const line = `L${x} ${middle - 7}L${x + 4} ${middle - 2}L${x - 4} ${middle + 2}L${x} ${middle + 7}L${x} ${to}`;
  return (
    <g>
      <rect class="paper-fill" x={x - 1.5} y={from} width="3" height={to - from} />
      <path class="thin" d={`M${x} ${from}${line}`} />
    </g>
  );
}
