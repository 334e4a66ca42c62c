/**
 * What is said of the stress that a note tells, beside its point and clear of the curve.
 * Units: SI in the state; drawing units otherwise.
 */
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import type { ListenLayout } from './layout.ts';
import { acrossAt, isAbove, notePlot, STRESSES } from './scales.ts';

const CLEAR = 50; // drawing units over the axis, room for the words beside a low point

/** What is said of the stress. */
function stressWords(state: State): string {
  const { noteStress, noteExpanded, isTooLow } = state.values;
  if (isTooLow) return 'too low for this span';
  if (isAbove(state)) return `${formatQuantity(noteStress, 'stress', state.system)}, off the plot`;
  return formatQuantity(noteStress, 'stress', state.system, { uncertainty: noteExpanded });
}

/** Right of the point and under the curve, where there is room; else left of the point and over it. */
function wordsPlace(state: State, layout: ListenLayout) {
  const { right, bottom, top } = layout;
  const { x, y } = notePlot(layout);
  const { note, noteStress, isTooLow } = state.values;
  const [at, level] = [x(note), y(noteStress)];
  const most = right - (state.narrow ? 110 : 150);
  const isOff = isTooLow === 1 || isAbove(state);
  const underCurve = acrossAt(state, layout, (STRESSES[1] * CLEAR) / (bottom - top)) + 8;
  const beside = isOff ? at + 14 : Math.max(at + 14, underCurve);
  if (beside <= most)
    return { x: beside, y: isOff ? top + 8 : Math.min(bottom - 28, level + 24), anchor: 'start' };
  return { x: at - 14, y: isOff ? top + 8 : Math.max(top + 8, level - 12), anchor: 'end' };
}

/** What the stress is, beside the point. */
export function StressWords({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: ListenLayout;
}) {
  const { x, y, anchor } = wordsPlace(state, layout);
  return (
    <text class="steel halo" x={x} y={y} text-anchor={anchor} data-sym="noteStress">
      {stressWords(state)}
    </text>
  );
}
