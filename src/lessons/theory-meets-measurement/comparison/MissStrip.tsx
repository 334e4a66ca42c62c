/**
 * What a line misses the readings by, as a strip under the plot on the same torques; how many are off its scale is said.
 * Units: SI in the readings; drawing units otherwise.
 */

import { ReadingMarks } from '../../../figures/stress-plot/ReadingMarks.tsx';
import { torqueScales } from '../../../figures/stress-plot/scales.ts';
import { TorqueAxes } from '../../../figures/stress-plot/TorqueAxes.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { StressReading } from '../results.worked.ts';
import type { State } from '../state.ts';
import { comparisonLayout, TORQUE_ENDS } from './layout.ts';
import { still } from './still.ts';

const FURTHEST = 27e6; // Pa: what misses by more is off the strip

interface MissStripProps {
  readonly state: State;
  readonly readings: readonly StressReading[];
  /** The line's stress at a torque, counted as the readings' is. */
  readonly stressOf: (torque: number) => number;
}

const scalesOf = (narrow: boolean) =>
  torqueScales(comparisonLayout(narrow).strip, TORQUE_ENDS, [-FURTHEST, FURTHEST]);

const axes = still((state) => {
  const scales = scalesOf(state.narrow);
  const { left, right } = scales.frame;
  return (
    <g>
      <TorqueAxes state={state} scales={scales} upright="reading − line" uprightTicks={3} />
      <path class="thin" d={`M${left} ${scales.y(0)}H${right}`} />
    </g>
  );
});

/** How many are off the strip and the furthest of them, on the other side of the zero line from where they lie. */
function OffScale({
  state,
  misses,
}: {
  readonly state: State;
  readonly misses: readonly number[];
}) {
  const off = misses.filter((miss) => Math.abs(miss) > FURTHEST);
  if (off.length === 0) return null;
  const { right, top, bottom } = comparisonLayout(state.narrow).strip;
  const furthest = off.reduce((most, miss) => (Math.abs(miss) > Math.abs(most) ? miss : most));
  const amount = formatQuantity(Math.abs(furthest), 'stress', state.system, { digits: 2 });
  const count = `${off.length} off this scale`;
  return (
    <text class="steel" x={right} y={furthest > 0 ? bottom - 6 : top + 13} text-anchor="end">
      {state.narrow ? count : `${count}, by up to ${amount}`}
    </text>
  );
}

/** Reading less line, with the reading's error bars. */
export function MissStrip({ state, readings, stressOf }: MissStripProps) {
  const misses = readings.map((reading) => ({
    ...reading,
    stress: reading.stress - stressOf(reading.torque),
  }));
  return (
    <g>
      {axes(state)}
      <ReadingMarks readings={misses} scales={scalesOf(state.narrow)} />
      <OffScale state={state} misses={misses.map(({ stress }) => stress)} />
    </g>
  );
}
