/**
 * What the last reading means from each of the three zeros, and by how much that is off.
 * Units: SI in the state; drawing units otherwise.
 */
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import { wrongLayout } from './layout.ts';
import { type ComparedZero, zerosOf } from './zeros.ts';

const LINE = 18;
const NEARLY = 0.05e6; // Pa: less than a figure shows

function nameOf({ key }: ComparedZero, { values, system }: State): string {
  if (key === 'slack') return 'set on the slack band';
  if (key === 'truth') return 'the true zero';
  return `set at ${formatQuantity(values.setAt, 'torque', system)}`;
}

/** An error in words, with its side. */
export function errorText(error: number, { system }: State): string {
  if (Math.abs(error) < NEARLY) return 'right';
  const size = formatQuantity(Math.abs(error), 'stress', system);
  return `${size} too ${error > 0 ? 'high' : 'low'}`;
}

/** Three rows of two lines. */
export function ZerosTable({ state }: { readonly state: State }) {
  const { table } = wrongLayout(state.narrow);
  const [left, words, right] = table.columns;
  return (
    <g>
      {zerosOf(state).map((zero, place) => (
        <g key={zero.key} transform={`translate(0 ${table.top + place * table.row})`}>
          <text class={zero.ink} x={left}>
            {place + 1}
          </text>
          <text class={zero.ink} x={words}>
            {nameOf(zero, state)}
          </text>
          <text class="note" x={words} y={LINE}>
            {errorText(zero.error, state)}
          </text>
          <text class={zero.ink} x={right} text-anchor="end">
            {formatQuantity(zero.believed, 'stress', state.system)}
          </text>
        </g>
      ))}
    </g>
  );
}
