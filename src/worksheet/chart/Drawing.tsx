/**
 * The worksheet's chart: the comparison of theory and measurement with the zero's interval and the setting in it.
 * Units: SI in the chart; drawing units otherwise.
 */
import type { JSX } from 'preact';
import { Sheet } from '../../figures/Sheet.tsx';
import { MeasuredLines } from '../../figures/stress-plot/MeasuredLines.tsx';
import { StressInterval } from '../../figures/stress-plot/StressInterval.tsx';
import { StressPlot } from '../../figures/stress-plot/StressPlot.tsx';
import type { TorqueScales } from '../../figures/stress-plot/scales.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';
import { CHART_SIZE, chartScales } from './layout.ts';
import type { StressChart } from './of-results.ts';

interface PartProps {
  readonly chart: StressChart;
  readonly scales: TorqueScales;
}

function Zero({ chart: { zero }, scales: { frame, x, y } }: PartProps): JSX.Element | null {
  if (!zero) return null;
  const [low, middle, high] = [y(zero.low), y(0), y(zero.high)];
  return (
    <g data-part="zero">
      <path class="axis" d={`M${frame.left} ${middle}H${frame.right}`} />
      <StressInterval at={x(zero.torque)} low={low} middle={middle} high={high} ink="steel" />
    </g>
  );
}

function Setting({ chart: { setting }, scales: { frame, x, y } }: PartProps): JSX.Element | null {
  if (!setting) return null;
  const [across, up] = [x(setting.torque), y(setting.stress)];
  return (
    <g data-part="setting">
      <path
        class="hand-thin"
        d={`M${frame.left} ${up}H${across}V${frame.bottom}`}
        stroke-dasharray="5 4"
      />
      <rect class="hand-line" x={across - 5} y={up - 5} width={10} height={10} />
    </g>
  );
}

interface DrawingProps {
  readonly chart: StressChart;
  readonly system: UnitSystem;
  readonly load?: QuantityKind;
}

/** The drawing; its finding and its description stand beside it, under ids that begin with `chart`. */
export function Drawing({ chart, system, load = 'torque' }: DrawingProps): JSX.Element {
  const scales = chartScales(chart, system, load);
  return (
    <Sheet idPrefix="chart" size={CHART_SIZE}>
      <StressPlot
        state={{ system, narrow: true, load }}
        scales={scales}
        prediction={chart.curve}
        readings={chart.readings}
        withMiddle
      >
        <Setting chart={chart} scales={scales} />
        {chart.lines && <MeasuredLines scales={scales} {...chart.lines} />}
        <Zero chart={chart} scales={scales} />
      </StressPlot>
    </Sheet>
  );
}
