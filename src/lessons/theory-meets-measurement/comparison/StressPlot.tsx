/**
 * The prediction as an area, the reader's own line with its handle, the readings, and, once asked for, the fit.
 * Units: SI in the state; drawing units otherwise.
 */

import { Handle } from '../../../figures/Handle.tsx';
import { theoryMeetsMeasurement } from '../model.ts';
import { known, readings, theoryCurve, zeroStress } from '../results.worked.ts';
import type { State } from '../state.ts';
import { Key } from './Key.tsx';
import { TORQUE_ENDS } from './layout.ts';
import { PredictionArea } from './PredictionArea.tsx';
import { ReadingMarks } from './ReadingMarks.tsx';
import { TorqueAxes } from './TorqueAxes.tsx';
import { pathThrough, straight, type TorqueScales } from './torque-frame.ts';

const HANDLE_TORQUE = 15.3;
const noLoad = { torque: known.drag, stress: 0 };

interface ComparisonPlotProps {
  readonly state: State;
  readonly scales: TorqueScales;
}

/** The readings counted from no tension, as all of them together place it. */
export function readingsFromZero() {
  return readings.map((reading) => ({ ...reading, stress: reading.stress - zeroStress }));
}

/** York's line counted from no tension: its stress at a torque. */
export function yorkStress(torque: number): number {
  return known.yorkIntercept + known.yorkSlope * torque - zeroStress;
}

function Fit({ state, scales }: ComparisonPlotProps) {
  const { slope, ownLow, ownHigh, ownEfficiency } = state.values;
  const line = (share: number) =>
    pathThrough(scales, straight(noLoad, slope * share, known.topTorque));
  const york = [4, TORQUE_ENDS[1]].map((torque) => ({ torque, stress: yorkStress(torque) }));
  return (
    <g data-sym="ownEfficiency">
      <path
        class="steel-thin"
        d={line(ownLow / ownEfficiency) + line(ownHigh / ownEfficiency)}
        stroke-dasharray="2 4"
      />
      <path class="steel-line" d={line(1)} />
      <path class="steel-thin" d={pathThrough(scales, york)} stroke-dasharray="9 4" />
    </g>
  );
}

function LineHandle({ state, scales }: ComparisonPlotProps) {
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

/** The plot of stress over torque. */
export function StressPlot({ state, scales }: ComparisonPlotProps) {
  const { lineSlope, shown } = state.values;
  const top = scales.x(known.topTorque);
  const { bottom } = scales.frame;
  return (
    <g>
      <PredictionArea points={theoryCurve} scales={scales} />
      <TorqueAxes state={state} scales={scales} numbered={false} />
      <path class="construction" d={`M${top} ${bottom}V${scales.frame.top}`} />
      <path
        class="hand-line"
        data-sym="efficiency"
        d={pathThrough(scales, straight(noLoad, lineSlope, TORQUE_ENDS[1]))}
      />
      {shown === 'fit' && <Fit state={state} scales={scales} />}
      <ReadingMarks readings={readingsFromZero()} scales={scales} />
      <Key state={state} frame={scales.frame} />
      <LineHandle state={state} scales={scales} />
    </g>
  );
}
