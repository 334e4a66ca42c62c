/**
 * Each edge as a bar over the one scale of stress: hatched where its cause forbids, clear where it allows. Where all are
 * clear is the window; the edges that bind are heavy.
 * Units: SI in the state; drawing units otherwise.
 */
import { LevelTicks } from '../../../figures/axis-ticks.tsx';
import { Dimension } from '../../../figures/dimension.tsx';
import { Hatch } from '../../../figures/Hatch.tsx';
import { linearScale, type Scale, ticks } from '../../../figures/scale.ts';
import { unitLabel } from '../../../units/label.ts';
import type { State } from '../state.ts';
import { edgeText, windowText } from './edge-text.ts';
import type { WindowLayout } from './layout.ts';
import { type EdgeRow, ORDER, rowsOf } from './rows.ts';

/** How far the scale reaches, Pa. */
export const MOST_STRESS = 260e6;

const BESIDE = 130; // a window narrower than that has its words beside it

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
  const number = edgeText(row.stress, state.system);
  const foot = y + thick - names.above;
  return (
    <g>
      <text class={row.binds ? 'halo' : 'note halo'} x={names.x} y={foot}>
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
  const { top, thick, step, axis, narrow } = layout;
  if (isOpen === 0) return null;
  const bars = ORDER.map((_, place) => [top + place * step, thick] as const);
  const under = top + (ORDER.length - 1) * step + thick;
  // on a phone the words are between the bars, and stay on paper
  const parts = narrow ? [...bars, [under, axis - under] as const] : [[top - 10, axis - top + 10]];
  return (
    <g>
      {parts.map(([y, height]) => (
        <rect
          key={y}
          class="steel-wash"
          x={x(lowEdge)}
          y={y}
          width={x(highEdge) - x(lowEdge)}
          height={height}
        />
      ))}
    </g>
  );
}

/** The window's own dimension, over the axis. */
function Opening({ state, layout }: PartProps) {
  const { lowEdge, highEdge, isOpen } = state.values;
  const { axis, opening, left, right } = layout;
  const x = stressScale(layout);
  if (isOpen === 0)
    return (
      <text class="note" x={(left + right) / 2} y={opening} text-anchor="middle">
        no window: the edges cross
      </text>
    );
  return (
    <g>
      <path
        class="axis"
        d={`M${x(lowEdge)} ${opening - 20}V${axis}M${x(highEdge)} ${opening - 20}V${axis}`}
      />
      <Dimension
        from={x(lowEdge)}
        to={x(highEdge)}
        y={opening}
        text={windowText(lowEdge, highEdge, state.system)}
        ink="steel"
        beside={x(highEdge) - x(lowEdge) < BESIDE}
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
      <Opening state={state} layout={layout} />
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
