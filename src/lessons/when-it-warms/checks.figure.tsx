/**
 * What one setting shows at a check cold and at a check warm, and what tightening at the warm one leads to.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { checksLayout } from './checks/layout.ts';
import { Rows } from './checks/Rows.tsx';
import { whenItWarms } from './model.ts';
import type { Figure, State } from './state.ts';

const say = teller(whenItWarms);

function finding(state: State): string {
  const { checkLoss, warmStress, warmer } = state.values;
  if (warmer === 0 || checkLoss === 0)
    return `Cold or warm, the check shows ${say(state, 'setting')}.`;
  if (warmStress === 0) return `Set to ${say(state, 'setting')} cold, the warm band hangs slack.`;
  if (warmer < 0)
    return `A setting of ${say(state, 'setting')} shows ${say(state, 'warmStress', 3)} once the band is colder.`;
  return `${say(state, 'setting')} cold is ${say(state, 'warmStress', 3)} warm. Tighten it then, and it is ${say(state, 'againStress', 3)} once cold.`;
}

function description(state: State): string {
  return `One setting at three moments on one scale: as set ${say(state, 'setting')}; with the band ${say(state, 'warmer')} warmer and nothing touched ${say(state, 'warmStress', 3)}; brought back to the setting at that check, and the band then back at its first warmth, ${say(state, 'againStress', 3)}.`;
}

function notes({ values }: State): readonly string[] {
  const holds = {
    rigid: 'nothing gives: the most that warmth can do',
    screw: 'a screw on Ottersleigh’s frame (invented)',
    spring: 'a spring between screw and frame',
    oil: 'oil at constant pressure, its accumulator open',
  };
  return [
    `${holds[values.tensioner]}; frame and wheels as at the setting`,
    'heavy line: the setting; makers’ limits come first',
  ];
}

function Drawing(state: State) {
  const layout = checksLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <Rows state={state} layout={layout} />
    </Sheet>
  );
}

/** The third figure of the lesson `when-it-warms`. */
export const figure: Figure = { finding, description, notes, Drawing };
