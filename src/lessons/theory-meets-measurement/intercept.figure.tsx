/**
 * The line through both errors carried back past the readings: at the drag that is taken as known it tells the zero
 * error, at no zero error it tells a drag; never both.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { ArrowHead } from '../../figures/dimension.tsx';
import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { Handle } from '../../figures/Handle.tsx';
import { Sheet } from '../../figures/Sheet.tsx';
import { ReadingMarks } from '../../figures/stress-plot/ReadingMarks.tsx';
import {
  type Frame,
  pathThrough,
  type TorqueScales,
  torqueScales,
} from '../../figures/stress-plot/scales.ts';
import { TorqueAxes } from '../../figures/stress-plot/TorqueAxes.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import { theoryMeetsMeasurement } from './model.ts';
import { known, readings } from './results.worked.ts';

const TORQUE_ENDS = [0, 16] as const;
const STRESS_ENDS = [-50e6, 100e6] as const;
const WIDE = { width: 880, height: 390, left: 64, right: 850, top: 30, bottom: 340 };
const NARROW = { width: 360, height: 300, left: 46, right: 352, top: 24, bottom: 256 };

const HANDLE_ABOVE = 18; // the torque axis, in drawing units
const DRAG_DIGITS = { digits: 2 };

interface PartProps {
  readonly state: FigureState;
  readonly scales: TorqueScales;
}

function words({ values, system }: FigureState) {
  const say = (name: string, kind: 'torque' | 'stretch' | 'stress') =>
    formatQuantity(Math.abs(values[name] ?? 0), kind, system);
  return {
    drag: formatQuantity(values['assumedDrag'] ?? 0, 'torque', system, DRAG_DIGITS),
    stretch: say('zeroErrorStretch', 'stretch'),
    stress: say('zeroErrorStress', 'stress'),
    implied: say('impliedDrag', 'torque'),
  };
}

const side = ({ values }: FigureState) =>
  (values['zeroErrorStretch'] ?? 0) < 0 ? 'below' : 'above';

function finding(state: FigureState): string {
  const { drag, stretch, implied } = words(state);
  return `With a drag of ${drag}, no tension lies ${stretch} ${side(state)} the first reading; were that reading the zero, the drag would be ${implied}.`;
}

function description(state: FigureState): string {
  const { drag, stress } = words(state);
  return `The line through the readings carried back to no torque. At a drag of ${drag} it stands ${stress} ${side(state)} the level of the first reading.`;
}

function notes(): readonly string[] {
  return [
    'stress counted from the first reading, which is not the zero',
    'error bars: 95 % of the scatter of wrench and dial',
    'hollow readings lie in the toe and are not in the line',
  ];
}

function Line({ scales }: { readonly scales: TorqueScales }) {
  const { yorkIntercept, yorkSlope } = known;
  const at = (torque: number) => ({ torque, stress: yorkIntercept + yorkSlope * torque });
  const used = readings.filter(({ inToe }) => !inToe);
  const first = used[0]?.torque ?? known.topTorque;
  return (
    <g data-sym="yorkSlope">
      <path class="steel-line" d={pathThrough(scales, [at(first), at(TORQUE_ENDS[1])])} />
      <path class="steel-thin" d={pathThrough(scales, [at(0), at(first)])} stroke-dasharray="6 4" />
    </g>
  );
}

/** The upright measure from the first reading's level to the line, at the drag taken as known. */
function ZeroError({ state, scales }: PartProps) {
  const { assumedDrag = 0, zeroErrorStress = 0 } = state.values;
  const at = scales.x(assumedDrag);
  const [level, end] = [scales.y(0), scales.y(zeroErrorStress)];
  const { stretch, stress } = words(state);
  const isLong = Math.abs(end - level) > 12;
  return (
    <g data-sym="zeroErrorStress">
      <path class="outline" d={`M${at} ${level}V${end}`} />
      {isLong && <ArrowHead x={at} y={end} angle={end > level ? 90 : -90} />}
      <text class="halo" x={at + 14} y={Math.max(level + 20, end + 8)}>
        zero error {state.narrow ? stretch : `${stretch}, or ${stress}`}
      </text>
    </g>
  );
}

function DragHandle({ state, scales }: PartProps) {
  const { assumedDrag = 0 } = state.values;
  const spec = theoryMeetsMeasurement.inputs['assumedDrag'];
  const { left, right, bottom } = scales.frame;
  if (!spec) return null;
  const [at, height] = [scales.x(assumedDrag), bottom - HANDLE_ABOVE];
  const text = formatQuantity(assumedDrag, 'torque', state.system, DRAG_DIGITS);
  return (
    <g>
      <path class="construction" d={`M${at} ${scales.y(0)}V${bottom}`} />
      <text class="hand halo" x={at + 22} y={height + 5}>
        drag {text}
      </text>
      <Handle
        x={at}
        y={height}
        input="assumedDrag"
        label="Move the drag"
        value={assumedDrag}
        min={spec.min}
        max={spec.max}
        text={text}
        drag="x"
        perUnit={(TORQUE_ENDS[1] - TORQUE_ENDS[0]) / (right - left)}
      />
    </g>
  );
}

function FirstReadingLevel({ state, scales }: PartProps) {
  const { frame, x, y } = scales;
  return (
    <g>
      <path class="centre" d={`M${frame.left} ${y(0)}H${frame.right}`} />
      <text class="note halo" x={frame.right} y={y(0) + 20} text-anchor="end">
        {state.narrow ? 'first reading' : 'level of the first reading'}
      </text>
      <circle class="ink-fill" cx={x(state.values['impliedDrag'] ?? 0)} cy={y(0)} r={3} />
    </g>
  );
}

function Drawing(state: FigureState) {
  const { width, height, ...frame }: Frame & { width: number; height: number } = state.narrow
    ? NARROW
    : WIDE;
  const scales = torqueScales(frame, TORQUE_ENDS, STRESS_ENDS);
  return (
    <Sheet idPrefix={state.idPrefix} size={{ width, height }}>
      <TorqueAxes state={state} scales={scales} upright="stress since the first reading" />
      <FirstReadingLevel state={state} scales={scales} />
      <Line scales={scales} />
      <ReadingMarks readings={readings} scales={scales} />
      <ZeroError state={state} scales={scales} />
      <DragHandle state={state} scales={scales} />
    </Sheet>
  );
}

/** The second figure of the lesson `theory-meets-measurement`. */
export const figure: FigureModule = { finding, description, notes, Drawing };
