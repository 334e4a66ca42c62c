/**
 * Each edge as a bar over the one scale of stress: hatched where its cause forbids, clear where it allows. Where all are
 * clear is the window; the edges that bind are heavy.
 * Units: SI in the state; drawing units otherwise.
 */
import { LevelTicks } from '../../../figures/axis-ticks.tsx';
import { Hatch } from '../../../figures/Hatch.tsx';
import { linearScale, type Scale, ticks } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { unitLabel } from '../../../units/label.ts';
import type { State } from '../state.ts';
import type { WindowLayout } from './layout.ts';
import { type EdgeRow, rowsOf } from './rows.ts';

/** How far the scale reaches, Pa. */
export const MOST_STRESS = 260e6;

interface PartProps {
  readonly state: State;
  readonly layout: WindowLayout;
}

/** From a stress to its place; what lies beyond the scale is at its end. */
export function stressScale({ left, right }: WindowLayout): Scale {
  const x = linearScale([0, MOST_STRESS], [left, right]);
  return (stress) => x(Math.min(MOST_STRESS, Math.max(0, stress)));
}

/** The name of an edge with its number, and on a wide page what it stands on. */
function Words({
  state,
  layout,
  row,
  y,
}: PartProps & { readonly row: EdgeRow; readonly y: number }) {
  const { names, thick, narrow } = layout;
  const number = formatQuantity(row.stress, 'stress', state.system, { digits: 2 });
  const foot = y + thick - names.above;
  return (
    <g>
      <text class={row.binds ? '' : 'note'} x={names.x} y={foot}>
        {row.name}: {row.isLow ? 'at least ' : 'at most '}
        {number}
        {row.binds ? ', binds' : ''}
      </text>
      {!narrow && (
        <text class="note" x={names.x} y={foot + names.second}>
          {row.because}
        </text>
      )}
    </g>
  );
}

/** An edge's bar. */
function Bar({ state, layout, row, y }: PartProps & { readonly row: EdgeRow; readonly y: number }) {
  const { left, right, thick } = layout;
  const at = stressScale(layout)(row.stress);
  const [from, to] = row.isLow ? [left, at] : [at, right];
  return (
    <g>
      <Hatch
        id={`${state.idPrefix}-${row.cause}`}
        x={from}
        y={y}
        width={Math.max(0, to - from)}
        height={thick}
      />
      <path class="axis" d={`M${left} ${y}H${right}M${left} ${y + thick}H${right}`} />
      <path class={row.binds ? 'limit' : 'thin'} d={`M${at} ${y}V${y + thick}`} />
    </g>
  );
}

/** The corridor between the edges that bind. */
function Corridor({ state, layout }: PartProps) {
  const { lowEdge, highEdge, isOpen } = state.values;
  const x = stressScale(layout);
  const { top, axis } = layout;
  if (isOpen === 0) return null;
  return (
    <g>
      <rect
        class="steel-wash"
        x={x(lowEdge)}
        y={top - 12}
        width={x(highEdge) - x(lowEdge)}
        height={axis - top + 12}
      />
      <path
        class="construction"
        d={`M${x(lowEdge)} ${top - 12}V${axis}M${x(highEdge)} ${top - 12}V${axis}`}
      />
    </g>
  );
}

/** All edges on their scale. */
export function EdgeBars({ state, layout }: PartProps) {
  const { left, right, top, step, axis, narrow } = layout;
  const { rows } = rowsOf(state);
  return (
    <g>
      <Corridor state={state} layout={layout} />
      {rows.map((row, place) => (
        <g key={row.cause}>
          <Bar state={state} layout={layout} row={row} y={top + place * step} />
          <Words state={state} layout={layout} row={row} y={top + place * step} />
        </g>
      ))}
      <path class="axis" d={`M${left} ${axis}H${right}`} />
      <LevelTicks
        ticks={ticks(0, MOST_STRESS, 'stress', state.system, narrow ? 3 : 6)}
        x={stressScale(layout)}
        y={axis}
        drop={20}
      />
      <text class="note" x={right} y={axis + 38} text-anchor="end">
        tension, {unitLabel('stress', state.system)}
      </text>
    </g>
  );
}
