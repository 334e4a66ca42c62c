/**
 * One series on the bench: its readings, the reader's ruler, and what the classroom rule and all readings together draw
 * through them.
 * Units: SI in the state; drawing units otherwise.
 */

import { mean } from '../../../core/summary.ts';
import { Handle } from '../../../figures/Handle.tsx';
import { DialAxes } from '../DialAxes.tsx';
import { type DialScales, pathThrough } from '../dial-scales.ts';
import { whereIsZero } from '../model.ts';
import type { State } from '../state.ts';
import { TORQUES } from '../taking.ts';
import { DIAL_ENDS, seriesScales } from './layout.ts';
import { readingsOf } from './of-state.ts';

const UPPER = TORQUES.slice(Math.floor(TORQUES.length / 2));
const RULER_TO = 15.6; // N·m
const HANDLE_BEFORE = 20; // the no-load torque

interface PartProps {
  readonly state: State;
  readonly scales: DialScales;
}

/** The ruler: it turns about the middle of the upper readings, and the reader holds its lower end. */
function Ruler({ state, scales }: PartProps) {
  const { eyeZero, drag } = state.values;
  const upper = readingsOf(state).slice(-UPPER.length);
  const middle = { torque: mean(UPPER), dial: mean(upper.map(({ reading }) => reading)) };
  const slope = (middle.dial - eyeZero) / (middle.torque - drag);
  const ends = [drag, RULER_TO].map((torque) => ({
    torque,
    dial: eyeZero + slope * (torque - drag),
  }));
  return <path class="hand-line" data-sym="eyeZero" d={pathThrough(scales, ends)} />;
}

/** A computed line: whole where its readings are, dashed from there to its zero. */
function ComputedLine({ state, scales }: PartProps) {
  const { way, drag, topTorque, classroomZero, classroomStretch, fullZero, fullStretch } =
    state.values;
  if (way === 'eye') return null;
  const [zero, stretch, ink] =
    way === 'full'
      ? [fullZero, fullStretch, 'steel']
      : [classroomZero, classroomStretch, undefined];
  const used = readingsOf(state).findIndex(({ isUsed }) => isUsed);
  const at = (torque: number) => ({
    torque,
    dial: zero + (stretch * (torque - drag)) / (topTorque - drag),
  });
  const from = TORQUES[used] ?? drag;
  return (
    <g>
      <path
        class={ink ? `${ink}-line` : 'outline'}
        d={pathThrough(scales, [at(from), at(topTorque)])}
      />
      <path
        class={ink ? `${ink}-thin` : 'thin'}
        stroke-dasharray="6 4"
        d={pathThrough(scales, [at(drag), at(from)])}
      />
    </g>
  );
}

function Points({ state, scales }: PartProps) {
  return (
    <g>
      {readingsOf(state).map(({ torque, reading, isUsed }) => (
        <circle
          key={torque}
          class={isUsed ? 'ink-fill' : 'thin paper-fill'}
          cx={scales.x(torque)}
          cy={scales.y(reading)}
          r={4}
        />
      ))}
    </g>
  );
}

function ZeroHandle({ state, scales }: PartProps) {
  const { top, bottom } = scales.frame;
  const { eyeZero, drag } = state.values;
  const [at, level] = [scales.x(drag), scales.y(eyeZero)];
  return (
    <g>
      <path class="hand-line" d={`M${at - HANDLE_BEFORE} ${level}H${at}`} />
      <circle class="hand-fill" cx={at} cy={level} r={4} />
      <Handle
        model={whereIsZero}
        state={state}
        x={at - HANDLE_BEFORE}
        y={level}
        input="eyeZero"
        label="Move your zero"
        drag="y"
        perUnit={-(DIAL_ENDS[1] - DIAL_ENDS[0]) / (bottom - top)}
      />
    </g>
  );
}

/** The plot. */
export function ReadingsPlot({ state }: { readonly state: State }) {
  const scales = seriesScales(state.narrow);
  const { top, bottom } = scales.frame;
  const drag = scales.x(state.values.drag);
  return (
    <g>
      <DialAxes state={state} scales={scales} upright="dial since the first reading" />
      <path class="construction" d={`M${drag} ${top}V${bottom}`} />
      <Ruler state={state} scales={scales} />
      <ComputedLine state={state} scales={scales} />
      <Points state={state} scales={scales} />
      <ZeroHandle state={state} scales={scales} />
    </g>
  );
}
