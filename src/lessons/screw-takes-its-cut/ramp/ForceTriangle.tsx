/**
 * The triangle that load, push and the thread's answer close, to scale: the cone of friction hung from the load's
 * upper end cuts off what it takes to raise the load and to let it down; its middle line, what friction leaves out.
 * Units: SI in the state (pushes as shares of the load); drawing units otherwise.
 */

import { ArrowHead } from '../../../figures/dimension.tsx';
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import type { RampLayout } from './layout.ts';

interface PartProps {
  readonly state: State;
  readonly layout: RampLayout;
}

interface PushProps {
  readonly x: number;
  readonly y: number;
  /** Drawn length, to the right; negative to the left. */
  readonly length: number;
  readonly text: string;
  readonly ink: 'hand' | 'steel';
  readonly id: string;
}

/** One push under the triangle, from the load's line, its words to the right of it or above it. */
function Push({ x, y, length, text, ink, id }: PushProps) {
  const end = x + length;
  const isLong = length > 110;
  return (
    <g data-sym={id}>
      <ForceArrow x={x} y={y} length={length} ink={ink} head={9} />
      <text
        class={`halo ${ink}`}
        x={isLong ? end : Math.max(end, x) + 8}
        y={isLong ? y - 5 : y + 5}
        text-anchor={isLong ? 'end' : 'start'}
      >
        {text}
      </text>
    </g>
  );
}

function downWords(push: number, share: string): string {
  if (push >= 0) return `to let down ${share}`;
  return `to hold it back ${share}`;
}

function Pushes({ state, layout }: PartProps) {
  const { x, y, load, rowHeight } = layout.triangle;
  const { pushFree, pushUp, pushDown } = state.values;
  const say = (share: number) =>
    formatQuantity(Math.abs(share), 'percent', state.system, { digits: 2 });
  const row = (place: number) => y + load + rowHeight * (place + 0.9);
  return (
    <g>
      <Push
        x={x}
        y={row(0)}
        length={load * pushUp}
        text={`to raise ${say(pushUp)}`}
        ink="hand"
        id="torque"
      />
      <Push
        x={x}
        y={row(1)}
        length={load * pushFree}
        text={`without friction ${say(pushFree)}`}
        ink="steel"
        id="pushFree"
      />
      <Push
        x={x}
        y={row(2)}
        length={-load * pushDown}
        text={downWords(pushDown, say(pushDown))}
        ink="hand"
        id="pushDown"
      />
    </g>
  );
}

/** The triangle and the pushes under it. */
export function ForceTriangle({ state, layout }: PartProps) {
  const { x, y, load, rowHeight } = layout.triangle;
  const { pushFree, pushUp, pushDown, leadAngle, frictionAngle } = state.values;
  const bottom = y + load;
  const [up, free, down] = [x + load * pushUp, x + load * pushFree, x - load * pushDown];
  const lean = 180 + 90 - ((leadAngle + frictionAngle) * 180) / Math.PI;
  const last = bottom + rowHeight * 2.9;
  return (
    <g>
      <path class="hand-wash" d={`M${x} ${y}L${down} ${bottom}H${up}Z`} />
      <path class="thin" d={`M${x} ${y}L${down} ${bottom}`} />
      <path class="centre" d={`M${x} ${y}L${free} ${bottom + 8}`} />
      <path class="axis" d={`M${x} ${bottom}V${last}`} />
      <path class="outline" d={`M${x} ${y}V${bottom - 6}`} />
      <ArrowHead x={x} y={bottom} angle={90} size={11} />
      <path class="outline" d={`M${up} ${bottom}L${x} ${y}`} />
      <ArrowHead x={x} y={y} angle={lean} size={11} />
      <ForceArrow x={x} y={bottom} length={load * pushUp} ink="hand" />
      <text
        class="halo"
        x={Math.min(x, x + (down - x) * 0.45) - 10}
        y={y + load * 0.45}
        text-anchor="end"
      >
        load
      </text>
      <text class="halo" x={x + (up - x) * 0.8 + 12} y={y + load * 0.8}>
        answer
      </text>
      <Pushes state={state} layout={layout} />
    </g>
  );
}
