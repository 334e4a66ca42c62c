/**
 * The line through both errors carried back past the readings: at the no-load torque that is taken as known it
 * tells the zero error, at no zero error it tells a no-load torque; never both.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { ArrowHead } from '../../figures/dimension.tsx';
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
import type { Figure, State } from './state.ts';

const TORQUE_ENDS = [-0.8, 16] as const; // so that the grip at 0 is clear of the upright axis
const STRESS_ENDS = [-50e6, 100e6] as const;
const WIDE = { width: 880, height: 390, left: 64, right: 850, top: 30, bottom: 340 };
const NARROW = { width: 360, height: 300, left: 46, right: 352, top: 24, bottom: 256 };

const HANDLE_ABOVE = 18; // the torque axis, in drawing units
const MEASURE_AT = 5.7; // N·m, right of every no-load torque, where the zero error is measured
const DRAG_DIGITS = { digits: 2 };

interface PartProps {
  readonly state: State;
  readonly scales: TorqueScales;
}

function words({ values, system }: State) {
  const say = (value: number, kind: 'torque' | 'stretch' | 'stress') =>
    formatQuantity(Math.abs(value), kind, system);
  return {
    drag: formatQuantity(values.assumedDrag, 'torque', system, DRAG_DIGITS),
    stretch: say(values.zeroErrorStretch, 'stretch'),
    stress: say(values.zeroErrorStress, 'stress'),
    implied: say(values.impliedDrag, 'torque'),
  };
}

const side = ({ values }: State) => (values.zeroErrorStretch < 0 ? 'below' : 'above');

function finding(state: State): string {
  const { drag, stretch, implied } = words(state);
  return `With a no-load torque of ${drag}, the zero is ${stretch} ${side(state)} the first reading. With ${implied} it would be at that reading.`;
}

function description(state: State): string {
  const { drag, stress } = words(state);
  return `The line through the readings is carried back to zero torque. At a no-load torque of ${drag} it is ${stress} ${side(state)} the level of the first reading.`;
}

function notes(): readonly string[] {
  return [
    'stress is counted from the first reading, which is not the zero',
    'error bars: 95 % of the scatter of wrench and dial',
    'hollow readings are in the toe, and not in the line',
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

/** The measure from the first reading's level to the line, taken out to the right where nothing else is. */
function ZeroError({ state, scales }: PartProps) {
  const { assumedDrag, zeroErrorStress } = state.values;
  const [at, measured] = [scales.x(assumedDrag), scales.x(MEASURE_AT)];
  const [level, end] = [scales.y(0), scales.y(zeroErrorStress)];
  const { stretch, stress } = words(state);
  const isLong = Math.abs(end - level) > 12;
  return (
    <g data-sym="zeroErrorStress">
      <circle class="ink-fill" cx={at} cy={end} r={3} />
      <path class="axis" d={`M${at} ${end}H${measured + 5}`} />
      <path class="outline" d={`M${measured} ${level}V${end}`} />
      {isLong && <ArrowHead x={measured} y={end} angle={end > level ? 90 : -90} />}
      <text class="halo" x={measured + 10} y={level + 40}>
        zero error {state.narrow ? stretch : `${stretch}, or ${stress}`}
      </text>
    </g>
  );
}

function DragHandle({ state, scales }: PartProps) {
  const { assumedDrag } = state.values;
  const { left, right, bottom } = scales.frame;
  const [at, height] = [scales.x(assumedDrag), bottom - HANDLE_ABOVE];
  const text = formatQuantity(assumedDrag, 'torque', state.system, DRAG_DIGITS);
  return (
    <g>
      <path class="construction" d={`M${at} ${scales.y(0)}V${bottom}`} />
      <text class="hand halo" x={at + 22} y={height + 5}>
        no-load torque {text}
      </text>
      <Handle
        model={theoryMeetsMeasurement}
        state={state}
        x={at}
        y={height}
        input="assumedDrag"
        label="Move the no-load torque"
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
      <path class="construction" d={`M${x(0)} ${frame.top}V${frame.bottom}`} />
      <text class="note halo" x={frame.right} y={y(0) + 20} text-anchor="end">
        {state.narrow ? 'first reading' : 'level of the first reading'}
      </text>
      <circle class="ink-fill" cx={x(state.values.impliedDrag)} cy={y(0)} r={3} />
    </g>
  );
}

function Drawing(state: State) {
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
export const figure: Figure = { finding, description, notes, Drawing };
