/**
 * The prediction as an area, the reader's own line with its handle, the readings, and, once asked for, the fit.
 * Units: SI in the state; drawing units otherwise.
 */

import { Handle } from '../../../figures/Handle.tsx';
import { MeasuredLines } from '../../../figures/stress-plot/MeasuredLines.tsx';
import { PredictionArea } from '../../../figures/stress-plot/PredictionArea.tsx';
import { ReadingMarks } from '../../../figures/stress-plot/ReadingMarks.tsx';
import {
  pathThrough,
  straight,
  type TorqueScales,
  torqueScales,
} from '../../../figures/stress-plot/scales.ts';
import { TorqueAxes } from '../../../figures/stress-plot/TorqueAxes.tsx';
import { theoryMeetsMeasurement } from '../model.ts';
import { known, readings, theoryCurve, zeroStress } from '../results.worked.ts';
import type { State } from '../state.ts';
import { LineWords, StillWords } from './LineWords.tsx';
import { comparisonLayout, STRESS_ENDS, TORQUE_ENDS } from './layout.ts';
import { still } from './still.ts';

const HANDLE_TORQUE = 15.3;
const noLoad = { torque: known.drag, stress: 0 };

interface PlotProps {
  readonly state: State;
  readonly scales: TorqueScales;
}

/** The readings counted from no tension, as all of them together place it. */
export const readingsFromZero = readings.map((reading) => ({
  ...reading,
  stress: reading.stress - zeroStress,
}));

/** York's line counted from no tension: its stress at a torque. */
export function yorkStress(torque: number): number {
  return known.yorkIntercept + known.yorkSlope * torque - zeroStress;
}

/** The plot's scales. */
export const plotScales = (narrow: boolean): TorqueScales =>
  torqueScales(comparisonLayout(narrow).plot, TORQUE_ENDS, STRESS_ENDS);

function Fit({ state, scales }: PlotProps) {
  const { slope, ownLow, ownHigh, ownEfficiency } = state.values;
  const line = (share: number) => straight(noLoad, slope * share, TORQUE_ENDS[1]);
  return (
    <MeasuredLines
      scales={scales}
      whole={line(1)}
      ends={[line(ownLow / ownEfficiency), line(ownHigh / ownEfficiency)]}
      throughBothErrors={[4, TORQUE_ENDS[1]].map((torque) => ({
        torque,
        stress: yorkStress(torque),
      }))}
    />
  );
}

function LineHandle({ state, scales }: PlotProps) {
  const { efficiency, lineSlope } = state.values;
  const reach = HANDLE_TORQUE - noLoad.torque;
  const stressPerPixel = scales.stressEnds[1] / (scales.frame.bottom - scales.frame.top);
  return (
    <Handle
      model={theoryMeetsMeasurement}
      state={state}
      x={scales.x(HANDLE_TORQUE)}
      y={scales.y(lineSlope * reach)}
      input="efficiency"
      label="Tilt the line: efficiency of the screw"
      drag="y"
      perUnit={(-stressPerPixel * efficiency) / (lineSlope * reach)}
    />
  );
}

/** Under the lines: prediction, axes, the torque at which both are compared. */
const ground = still((state) => {
  const scales = plotScales(state.narrow);
  const { top, bottom } = scales.frame;
  return (
    <g>
      <PredictionArea points={theoryCurve} scales={scales} />
      <TorqueAxes state={state} scales={scales} numbered={false} />
      <StillWords state={state} scales={scales} />
      <path class="construction" d={`M${scales.x(known.topTorque)} ${bottom}V${top}`} />
    </g>
  );
});

const marks = still(({ narrow }) => (
  <ReadingMarks readings={readingsFromZero} scales={plotScales(narrow)} />
));

/** The plot of stress over torque. */
export function PlotWithLine({ state }: { readonly state: State }) {
  const scales = plotScales(state.narrow);
  const { lineSlope, shown } = state.values;
  return (
    <g>
      {ground(state)}
      <path
        class="hand-line"
        data-sym="efficiency"
        d={pathThrough(scales, straight(noLoad, lineSlope, TORQUE_ENDS[1]))}
      />
      {shown === 'fit' && <Fit state={state} scales={scales} />}
      {marks(state)}
      <LineWords state={state} scales={scales} />
      <LineHandle state={state} scales={scales} />
    </g>
  );
}
