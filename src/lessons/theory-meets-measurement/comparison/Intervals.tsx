/**
 * Prediction and measurement at the highest torque, each with its 95 % interval, and the reader's line and guess.
 * Units: SI in the state; drawing units otherwise.
 */

import type { FigureState } from '../../../figures/figure.ts';
import { ticks } from '../../../figures/scale.ts';
import { StressInterval } from '../../../figures/stress-plot/StressInterval.tsx';
import type { Frame } from '../../../figures/stress-plot/scales.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { STRESS_ENDS } from './layout.ts';

/** The drawing's place of a stress, in Pa. */
type Place = (stress: number) => number;

interface ComparisonIntervalsProps {
  readonly state: FigureState;
  readonly frame: Frame;
  readonly place: Place;
}

interface Side {
  readonly name: 'predicted' | 'measured';
  readonly ink: 'ink' | 'steel';
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

function sides({ values }: FigureState): readonly Side[] {
  const of = (name: Side['name'], ink: Side['ink']): Side => ({
    name,
    ink,
    low: values[`${name}Low`] ?? 0,
    middle: values[`${name}Stress`] ?? 0,
    high: values[`${name}High`] ?? 0,
  });
  return [of('predicted', 'ink'), of('measured', 'steel')];
}

function Upright({ state, frame, place }: ComparisonIntervalsProps) {
  const { values, system } = state;
  const stress = (value: number) => formatQuantity(value, 'stress', system);
  const middle = (frame.left + frame.right) / 2;
  const mine = place(values['lineStress'] ?? 0);
  return (
    <g>
      {ticks(STRESS_ENDS[0], STRESS_ENDS[1], 'stress', system, 4).map(({ value, text }) => (
        <path
          key={text}
          class="grid"
          d={`M${frame.left - 32} ${place(value)}H${frame.right + 32}`}
        />
      ))}
      <text class="note" x={middle} y={frame.top - 10} text-anchor="middle">
        at {formatQuantity(values['topTorque'] ?? 0, 'torque', system)}
      </text>
      {sides(state).map(({ name, ink, ...stresses }, column) => {
        const at = column === 0 ? frame.left : frame.right;
        const [low, centre, high] = [stresses.low, stresses.middle, stresses.high].map(place);
        return (
          <g key={name} data-sym={`${name}Stress`}>
            <StressInterval
              at={at}
              low={low ?? 0}
              middle={centre ?? 0}
              high={high ?? 0}
              ink={ink}
            />
            <text class={ink} x={at} y={frame.bottom + 22} text-anchor="middle">
              {name}
            </text>
            <text class={ink} x={at} y={frame.bottom + 42} text-anchor="middle">
              {stress(stresses.middle)}
            </text>
          </g>
        );
      })}
      <path class="hand-line" d={`M${frame.left - 16} ${mine}H${frame.left + 16}`} />
    </g>
  );
}

function Level({ state, frame, place }: ComparisonIntervalsProps) {
  const { values, system } = state;
  const mine = place(values['lineStress'] ?? 0);
  return (
    <g>
      {sides(state).map(({ name, ink, ...stresses }, row) => {
        const at = row === 0 ? frame.top : frame.bottom;
        const [low, centre, high] = [stresses.low, stresses.middle, stresses.high].map(place);
        return (
          <g key={name} data-sym={`${name}Stress`}>
            <text class={ink} x={0} y={at + 5}>
              {name} {formatQuantity(stresses.middle, 'stress', system)}
            </text>
            <StressInterval
              at={at}
              low={low ?? 0}
              middle={centre ?? 0}
              high={high ?? 0}
              ink={ink}
              level
            />
          </g>
        );
      })}
      <path class="hand-line" d={`M${mine} ${frame.top - 13}V${frame.top + 13}`} />
    </g>
  );
}

/** What the reader guessed, across the measured bar. */
function GuessMark({ state, frame, place }: ComparisonIntervalsProps) {
  const at = place(state.guess ?? 0);
  const { right, bottom } = frame;
  return (
    <g>
      <path
        class="hidden-edge"
        d={
          state.narrow
            ? `M${at} ${bottom - 12}V${bottom + 10}`
            : `M${right - 16} ${at}H${right + 16}`
        }
      />
      <text
        class="note halo"
        x={state.narrow ? Math.min(at, right - 14) : right + 22}
        y={state.narrow ? bottom + 22 : at + 5}
        text-anchor={state.narrow ? 'middle' : 'start'}
      >
        guess
      </text>
    </g>
  );
}

/** The two intervals: upright beside the plot, level on a phone; the reader's guess among them. */
export function Intervals(props: ComparisonIntervalsProps) {
  return (
    <g>
      {props.state.narrow ? <Level {...props} /> : <Upright {...props} />}
      {props.state.guess !== undefined && <GuessMark {...props} />}
    </g>
  );
}
