/**
 * The screw takes its cut: one turn of the thread unwound from the screw into a ramp, the load on it with its triangle
 * of forces in the cone of friction, and the work of one turn as a bar.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { threadFrictionHalfWidth } from '../../core/assumptions.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { formatNumber } from '../../units/format-number.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { EffortBar } from './ramp/EffortBar.tsx';
import { ForceCone } from './ramp/ForceCone.tsx';
import { drawnSteeper } from './ramp/geometry.ts';
import { Handles } from './ramp/Handles.tsx';
import { rampLayout } from './ramp/layout.ts';
import { ScrewCylinder } from './ramp/ScrewCylinder.tsx';
import { ThreadFlank } from './ramp/ThreadFlank.tsx';
import { threadHold } from './ramp/thread-hold.ts';
import { UnrolledTurn } from './ramp/UnrolledTurn.tsx';
import type { Figure, State } from './state.ts';

function words({ values, system }: State) {
  const say = (value: number, kind: 'angle' | 'percent') =>
    formatQuantity(Math.abs(value), kind, system, { digits: 2 });
  return {
    climb: say(values.leadAngle, 'angle'),
    arrives: say(values.efficiency, 'percent'),
    alone: say(values.threadEfficiency, 'percent'),
    up: say(values.pushUp, 'percent'),
    free: say(values.pushFree, 'percent'),
    down: say(values.pushDown, 'percent'),
  };
}

const ENDS = {
  firmly: 'the thread holds the load',
  barely: 'the thread only just holds',
  not: 'the thread alone lets go',
} as const;

function finding(state: State): string {
  const { arrives } = words(state);
  return `${arrives} of your work reaches the wheel; ${ENDS[threadHold(state.values)]}.`;
}

function description(state: State): string {
  const { climb, alone, up, free, down } = words(state);
  const slides = threadHold(state.values) === 'not';
  const back = slides ? `to keep it from sliding down, ${down}` : `to let it down, ${down}`;
  return `One turn of the thread unwound from the screw into a ramp that climbs ${climb}, with the load on it. To raise the load takes a level push of ${up} of it; without friction ${free} would do; ${back}. Load, push and the thread’s reaction close as a triangle on the load. The thread alone passes on ${alone} of the work.`;
}

function notes(state: State): readonly string[] {
  const steeper = formatNumber(drawnSteeper(state.values), { significant: 2, trim: true });
  return [
    `slopes and pushes drawn × ${steeper}, bar to scale`,
    'push in % of the load, without the collar',
    `“only just holds” means: with ${threadFrictionHalfWidth} less friction it would slide`,
  ];
}

function Drawing(state: State) {
  const layout = rampLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <ScrewCylinder state={state} layout={layout} />
      <UnrolledTurn state={state} layout={layout} />
      <ForceCone state={state} layout={layout} />
      <ThreadFlank state={state} layout={layout} />
      <EffortBar state={state} bar={layout.bar} guess={state.guess} />
      <Handles state={state} layout={layout} />
    </Sheet>
  );
}

/** The first figure of the lesson `screw-takes-its-cut`. */
export const figure: Figure = { finding, description, notes, Drawing };
