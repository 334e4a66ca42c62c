/**
 * The start of the line drawn larger, joined to the small frame that it enlarges: the range in which small mills work,
 * with the strip's place in it as long as it is there.
 * Units: SI in the state; drawing units otherwise.
 */

import { workingStress } from '../../core/assumptions.ts';
import { STRIP } from './model.ts';
import { type Plot, reaches, startPlot, steelLine, stripPlace, wholePlot } from './plot-frame.ts';
import { Axes, StripReading } from './StressStrainPlot.tsx';
import type { State } from './state.ts';
import type { StripLayout } from './strip-layout.ts';

interface WorkingRangeProps {
  readonly state: State;
  readonly layout: StripLayout;
}

/** Frame of the enlarged part and, while the strip is in it, the lines that join the two; else they would cross what is read there. */
function Joined({ whole, start, isIn }: { whole: Plot; start: Plot; isIn: boolean }) {
  const [right, top] = [whole.x(start.mostStrain), whole.y(start.mostStress)];
  const { left, bottom } = whole;
  return (
    <g>
      <path class="construction" d={`M${left} ${top}H${right}V${bottom}`} />
      {isIn && (
        <path
          class="construction"
          d={`M${right} ${top}L${start.left} ${start.top}M${right} ${bottom}H${start.left}`}
        />
      )}
    </g>
  );
}

/** The shaded range of work, and the line through it. */
function Range({ state, plot }: { readonly state: State; readonly plot: Plot }) {
  const { left, right, top, bottom, y, mostStress } = plot;
  const { low, high } = workingStress;
  const leaves = mostStress / STRIP.youngsModulus;
  return (
    <g>
      <rect
        class="steel-wash"
        x={left}
        y={y(high)}
        width={right - left}
        height={y(low) - y(high)}
      />
      <path class="construction" d={`M${left} ${top}H${right}V${bottom}`} />
      <path class="thin" d={steelLine(plot, leaves)} />
      <path class="steel-line" d={steelLine(plot, Math.min(leaves, state.values.strain))} />
    </g>
  );
}

/** The enlarged start of the line. */
export function WorkingRange({ state, layout }: WorkingRangeProps) {
  const start = startPlot(layout);
  const { right, top, x, y } = start;
  const place = stripPlace(state);
  const isIn = reaches(start, state);
  return (
    <g>
      <Joined whole={wholePlot(layout)} start={start} isIn={isIn} />
      <Range state={state} plot={start} />
      <Axes state={state} plot={start} />
      <text class="note" x={right} y={top - 8} text-anchor="end">
        where small mills work, × {layout.times}
      </text>
      {isIn && place.stress > 0 && <StripReading state={state} plot={start} />}
      {isIn && <circle class="steel-fill" cx={x(place.strain)} cy={y(place.stress)} r={6} />}
    </g>
  );
}
