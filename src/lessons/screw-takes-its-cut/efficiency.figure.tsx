/**
 * What reaches the wheel of the work: efficiency against lead angle with the reader's screw on it, and the work of one turn
 * as a bar.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { Sheet } from '../../figures/Sheet.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import { Curve } from './efficiency/Curve.tsx';
import { efficiencyLayout } from './efficiency/layout.ts';
import { EffortBar } from './ramp/EffortBar.tsx';
import type { Figure, State } from './state.ts';

function shares({ values, system }: State) {
  const say = (share: number) =>
    formatQuantity(Math.max(0, share), 'percent', system, { digits: 2 });
  return {
    arrives: say(values.efficiency),
    alone: say(values.threadEfficiency),
    thread: say(values.threadShare),
    collar: say(values.collarShare),
  };
}

function finding(state: State): string {
  const { arrives, thread, collar } = shares(state);
  return `${arrives} of your work reaches the wheel. The thread turns ${thread} into heat, the collar ${collar}.`;
}

function description(state: State): string {
  const { arrives, alone, thread, collar } = shares(state);
  const angle = formatQuantity(state.values.leadAngle, 'angle', state.system, {
    digits: 2,
  });
  return `Two curves of efficiency against lead angle, for the thread alone and with its collar; both rise steeply at first and then level out. At ${angle} the thread alone passes on ${alone}, with its collar ${arrives}. A bar under them divides the work of one turn: ${arrives} reaches the wheel, ${thread} is lost in the thread, ${collar} under the collar.`;
}

function notes(): readonly string[] {
  return [
    'curves for this pitch diameter, friction, form and collar',
    'widths of the bar to scale',
    'work above the no-load torque',
  ];
}

function Drawing(state: State) {
  const layout = efficiencyLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <Curve state={state} layout={layout} />
      <EffortBar state={state} bar={layout.bar} />
    </Sheet>
  );
}

/** The second figure of the lesson `screw-takes-its-cut`. */
export const figure: Figure = { finding, description, notes, Drawing };
