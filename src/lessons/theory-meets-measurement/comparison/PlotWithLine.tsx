/**
 * The prediction as an area, the reader's own line with its handle, the readings, and, once asked for, the fit.
 * Units: SI in the state; drawing units otherwise.
 */

import type { FigureState } from '../../../figures/figure.ts';
import { Handle } from '../../../figures/Handle.tsx';
import { MeasuredLines } from '../../../figures/stress-plot/MeasuredLines.tsx';
import { StressPlot } from '../../../figures/stress-plot/StressPlot.tsx';
import { pathThrough, straight, type TorqueScales } from '../../../figures/stress-plot/scales.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { theoryMeetsMeasurement } from '../model.ts';
import { known, readings, theoryCurve, zeroStress } from '../results.worked.ts';
import { Key } from './Key.tsx';
import { TORQUE_ENDS } from './layout.ts';

const HANDLE_TORQUE = 15.3;
const noLoad = { torque: known.drag, stress: 0 };

interface PlotProps {
  readonly state: FigureState;
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

function Fit({ state, scales }: PlotProps) {
  const { slope = 0, ownLow = 0, ownHigh = 0, ownEfficiency = 1 } = state.values;
  const line = (share: number) => straight(noLoad, slope * share, known.topTorque);
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
  const { efficiency = 0, lineSlope = 0 } = state.values;
  const spec = theoryMeetsMeasurement.inputs['efficiency'];
  const reach = HANDLE_TORQUE - noLoad.torque;
  const stressPerPixel = scales.stressEnds[1] / (scales.frame.bottom - scales.frame.top);
  if (!spec) return null;
  return (
    <Handle
      x={scales.x(HANDLE_TORQUE)}
      y={scales.y(lineSlope * reach)}
      input="efficiency"
      label="Tilt the line: efficiency of the screw"
      value={efficiency}
      min={spec.min}
      max={spec.max}
      text={formatQuantity(efficiency, 'percent', state.system)}
      drag="y"
      perUnit={(-stressPerPixel * efficiency) / (lineSlope * reach)}
    />
  );
}

/** The plot of stress over torque. */
export function PlotWithLine({ state, scales }: PlotProps) {
  const { lineSlope = 0, shown = 0 } = state.values;
  const top = scales.x(known.topTorque);
  const { bottom } = scales.frame;
  return (
    <g>
      <StressPlot
        state={state}
        scales={scales}
        prediction={theoryCurve}
        readings={readingsFromZero()}
        numbered={false}
      >
        <path class="construction" d={`M${top} ${bottom}V${scales.frame.top}`} />
        <path
          class="hand-line"
          data-sym="efficiency"
          d={pathThrough(scales, straight(noLoad, lineSlope, TORQUE_ENDS[1]))}
        />
        {shown === 1 && <Fit state={state} scales={scales} />}
      </StressPlot>
      <Key state={state} frame={scales.frame} />
      <LineHandle state={state} scales={scales} />
    </g>
  );
}
