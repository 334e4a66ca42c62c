/**
 * Prediction and measurement at the highest torque, each with its 95 % interval, and the reader's line and guess, on one
 * scale: upright beside the plot, or level on a phone.
 * Units: SI in the state; drawing units otherwise.
 */

import { linearScale, type Scale, ticks } from '../../../figures/scale.ts';
import { StressInterval } from '../../../figures/stress-plot/StressInterval.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { known } from '../results.worked.ts';
import type { State } from '../state.ts';
import { comparisonLayout, STRESS_ENDS } from './layout.ts';
import { plotScales } from './PlotWithLine.tsx';
import { still } from './still.ts';

const SIDES = [
  {
    name: 'predicted',
    ink: 'ink',
    low: known.predictedLow,
    middle: known.predictedStress,
    high: known.predictedHigh,
  },
  {
    name: 'measured',
    ink: 'steel',
    low: known.measuredLow,
    middle: known.measuredStress,
    high: known.measuredHigh,
  },
] as const;

/** From a stress to its place across a phone's screen. */
function level(): Scale {
  const { intervals } = comparisonLayout(true);
  return linearScale(STRESS_ENDS, [intervals.left, intervals.right]);
}

const uprightSides = still(({ system }) => {
  const { intervals: frame } = comparisonLayout(false);
  const { y } = plotScales(false);
  const [from, to] = [frame.left - 32, frame.right + 32];
  return (
    <g>
      {ticks(STRESS_ENDS[0], STRESS_ENDS[1], 'stress', system, 4).map(({ value, text }) => (
        <path key={text} class="grid" d={`M${from} ${y(value)}H${to}`} />
      ))}
      <text class="note" x={(from + to) / 2} y={frame.top - 10} text-anchor="middle">
        at {formatQuantity(known.topTorque, 'torque', system)}
      </text>
      {SIDES.map(({ name, ink, low, middle, high }, column) => {
        const at = column === 0 ? frame.left : frame.right;
        return (
          <g key={name} data-sym={`${name}Stress`}>
            <StressInterval at={at} low={y(low)} middle={y(middle)} high={y(high)} ink={ink} />
            <text class={ink} x={at} y={frame.bottom + 22} text-anchor="middle">
              {name}
            </text>
            <text class={ink} x={at} y={frame.bottom + 42} text-anchor="middle">
              {formatQuantity(middle, 'stress', system)}
            </text>
          </g>
        );
      })}
    </g>
  );
});

const levelSides = still(({ system }) => {
  const { intervals: frame } = comparisonLayout(true);
  const x = level();
  return (
    <g>
      {SIDES.map(({ name, ink, low, middle, high }, row) => {
        const at = row === 0 ? frame.top : frame.bottom;
        return (
          <g key={name} data-sym={`${name}Stress`}>
            <text class={ink} x={0} y={at + 5}>
              {name} {formatQuantity(middle, 'stress', system)}
            </text>
            <StressInterval
              at={at}
              low={x(low)}
              middle={x(middle)}
              high={x(high)}
              ink={ink}
              level
            />
          </g>
        );
      })}
    </g>
  );
});

/** The reader's line across the prediction, the guess across the measurement. */
function UprightMarks({ values, guess }: State) {
  const { left, right } = comparisonLayout(false).intervals;
  const { y } = plotScales(false);
  const [mine, guessed] = [y(values.lineStress), y(guess ?? 0)];
  return (
    <g>
      <path class="hand-line" d={`M${left - 16} ${mine}H${left + 16}`} />
      {guess !== undefined && (
        <g>
          <path
            class="hand-line"
            stroke-dasharray="5 3"
            d={`M${right - 16} ${guessed}H${right + 16}`}
          />
          <text class="hand halo" x={right + 22} y={guessed - 3}>
            your
          </text>
          <text class="hand halo" x={right + 22} y={guessed + 14}>
            guess
          </text>
        </g>
      )}
    </g>
  );
}

/** The same on a phone; the guess has a row of its own under the measurement. */
function LevelMarks({ values, guess, system }: State) {
  const { top, bottom } = comparisonLayout(true).intervals;
  const x = level();
  const [mine, row] = [x(values.lineStress), 2 * bottom - top];
  return (
    <g>
      <path class="hand-line" d={`M${mine} ${top - 10}V${top + 10}`} />
      {guess !== undefined && (
        <g>
          <text class="hand" x={0} y={row + 5}>
            your guess {formatQuantity(guess, 'stress', system)}
          </text>
          <path
            class="hand-line"
            stroke-dasharray="5 3"
            d={`M${x(guess)} ${row - 24}V${row + 8}`}
          />
        </g>
      )}
    </g>
  );
}

/** The two intervals, and the reader's marks among them. */
export function Intervals(state: State) {
  const [sides, Marks] = state.narrow ? [levelSides, LevelMarks] : [uprightSides, UprightMarks];
  return (
    <g>
      {sides(state)}
      <Marks {...state} />
    </g>
  );
}
