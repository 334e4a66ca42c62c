/**
 * The grip under a plot of the dial over torque: it moves along the torque, and a line leads up to the dial there.
 * Units: SI in the state; drawing units otherwise.
 */
import type { JSX } from 'preact';
import { Handle } from '../../figures/Handle.tsx';
import type { DialScales } from './dial-scales.ts';
import { whereIsZero } from './model.ts';
import type { State } from './state.ts';

const HANDLE_ABOVE = 17; // the torque axis

interface Props {
  readonly state: State;
  readonly scales: DialScales;
  readonly input: 'load' | 'setAt';
  readonly dial: number; // m, at the torque of the input
  readonly label: string;
}

/** The grip with its line. */
export function TorqueHandle({ state, scales, input, dial, label }: Props): JSX.Element {
  const { frame, torqueEnds } = scales;
  const at = scales.x(state.values[input]);
  return (
    <g>
      <path class="construction" d={`M${at} ${scales.y(dial)}V${frame.bottom}`} />
      <Handle
        model={whereIsZero}
        state={state}
        x={at}
        y={frame.bottom - HANDLE_ABOVE}
        input={input}
        label={label}
        drag="x"
        perUnit={(torqueEnds[1] - torqueEnds[0]) / (frame.right - frame.left)}
      />
    </g>
  );
}
