/**
 * The screw takes its cut: one turn of the thread unrolled into a ramp, the load on it, the cone of friction, and the
 * triangle of forces.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { threadFrictionHalfWidth } from '../../core/assumptions.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import { ForceTriangle } from './ramp/ForceTriangle.tsx';
import { rampPlaces } from './ramp/geometry.ts';
import { LoadOnRamp } from './ramp/LoadOnRamp.tsx';
import { rampLayout } from './ramp/layout.ts';
import { ScrewCylinder } from './ramp/ScrewCylinder.tsx';
import { ThreadFlank } from './ramp/ThreadFlank.tsx';
import { threadHold } from './ramp/thread-hold.ts';
import type { Figure, State } from './state.ts';

function words({ values, system }: State) {
  const say = (value: number, kind: 'angle' | 'percent') =>
    formatQuantity(Math.abs(value), kind, system, { digits: 2 });
  return {
    climb: say(values.leadAngle, 'angle'),
    friction: say(values.frictionAngle, 'angle'),
    passes: say(values.threadEfficiency, 'percent'),
    up: say(values.pushUp, 'percent'),
    free: say(values.pushFree, 'percent'),
    down: say(values.pushDown, 'percent'),
  };
}

const ENDS = {
  firmly: 'it stays where it is left',
  barely: 'it holds only just, so do not rely on it',
} as const;

function finding(state: State): string {
  const { climb, friction, passes } = words(state);
  const hold = threadHold(state.values);
  const end =
    hold === 'not'
      ? `It climbs ${climb}, friction holds only up to ${friction}: the load turns it back.`
      : `It climbs ${climb}, friction holds up to ${friction}: ${ENDS[hold]}.`;
  return `The thread alone passes on ${passes} of the push. ${end}`;
}

function description(state: State): string {
  const { climb, up, free, down } = words(state);
  const slides = threadHold(state.values) === 'not';
  const back = !slides ? `to let it down, ${down}` : `to keep it from sliding down, ${down}`;
  return `One turn of the thread unrolled into a ramp that climbs ${climb}, with the load on it. To raise the load takes a level push of ${up} of it; without friction ${free} would do; ${back}. The three forces close as a triangle.`;
}

function notes(): readonly string[] {
  return [
    'ramp and cylinder drawn to one scale, their slope as it is',
    'triangle to scale; arrows on the ramp show directions',
    'thread alone, collar left out',
    `“only just”: it would let go if friction were ${threadFrictionHalfWidth} less, and no guess is better than that`,
  ];
}

function Drawing(state: State) {
  const layout = rampLayout(state.narrow);
  const { rise } = rampPlaces(state.values, layout);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <ScrewCylinder layout={layout} rise={rise} />
      <LoadOnRamp state={state} layout={layout} />
      <ForceTriangle state={state} layout={layout} />
      <ThreadFlank state={state} layout={layout} />
    </Sheet>
  );
}

/** The first figure of the lesson `screw-takes-its-cut`. */
export const figure: Figure = { finding, description, notes, Drawing };
