/**
 * The dial over torque from the slack band on, and the part of it that is stretch; walked as far as the load.
 * Units: SI in the state; drawing units otherwise.
 */
import { DialAxes } from '../DialAxes.tsx';
import { type DialScales, dialScales, pathThrough } from '../dial-scales.ts';
import type { State } from '../state.ts';
import { TorqueHandle } from '../TorqueHandle.tsx';
import { bandAt } from './curl.ts';
import { toeLayout } from './layout.ts';
import { atRest } from './rest.worked.ts';

const TORQUE_ENDS = [0, 15] as const; // N·m
const DIAL_ENDS = [-0.3e-3, 0.48e-3] as const; // m
const STEPS = 60;

interface PartProps {
  readonly state: State;
  readonly scales: DialScales;
}

/** Torques from one to another: closer together where the curl dies. */
function torquesBetween(from: number, to: number): readonly number[] {
  return Array.from({ length: STEPS + 1 }, (_, i) => from + (to - from) * (i / STEPS) ** 2);
}

function Curves({ state, scales }: PartProps) {
  const { load, side } = state.values;
  const slack = bandAt(0, side).dial;
  const dialTo = (upTo: number) =>
    torquesBetween(atRest.drag, upTo).map((torque) => ({
      torque,
      dial: bandAt(torque, side).dial - slack,
    }));
  const stretchTo = (upTo: number) =>
    [atRest.drag, upTo].map((torque) => ({ torque, dial: bandAt(torque, side).stretch }));
  const path = (points: ReturnType<typeof dialTo>) => pathThrough(scales, points);
  return (
    <g>
      <path class="construction" d={path(dialTo(atRest.topTorque))} />
      <path class="construction" d={path(stretchTo(atRest.topTorque))} />
      <path class="steel-line" d={path(stretchTo(load))} data-sym="stretch" />
      <path class="outline" d={path(dialTo(load))} data-sym="dialFromSlack" />
    </g>
  );
}

function Ends({ state, scales }: PartProps) {
  const { topStretch, slackTopReading } = state.values;
  const x = scales.frame.right + 6;
  return (
    <g>
      <text x={x} y={scales.y(slackTopReading) + 5}>
        dial
      </text>
      <text class="steel" x={x} y={scales.y(topStretch) + 5}>
        stretch
      </text>
    </g>
  );
}

function LoadHandle({ state, scales }: PartProps) {
  const { load, dialFromSlack: dial } = state.values;
  const label = 'Turn the handle: torque';
  return (
    <g>
      <TorqueHandle state={state} scales={scales} input="load" dial={dial} label={label} />
      <circle class="ink-fill" cx={scales.x(load)} cy={scales.y(dial)} r={4} />
    </g>
  );
}

/** The plot. */
export function TravelPlot({ state }: { readonly state: State }) {
  const scales = dialScales(toeLayout(state.narrow).plot, TORQUE_ENDS, DIAL_ENDS);
  return (
    <g>
      <DialAxes state={state} scales={scales} upright="dial since slack" uprightTicks={3} />
      <path class="axis" d={`M${scales.frame.left} ${scales.y(0)}H${scales.frame.right}`} />
      <Curves state={state} scales={scales} />
      <Ends state={state} scales={scales} />
      <LoadHandle state={state} scales={scales} />
    </g>
  );
}
