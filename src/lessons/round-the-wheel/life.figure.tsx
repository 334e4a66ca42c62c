/**
 * What costs life: thickness, tension and wheels changed by the same share, one at a time, and what each makes of the
 * band's life as it is set. Ratios alone.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { quantitySpec } from '../../models/define-model.ts';
import { Bars } from './life/Bars.tsx';
import { ChangeRule } from './life/ChangeRule.tsx';
import { lifeLayout } from './life/layout.ts';
import { changeWords, lifeWords } from './life/rows.ts';
import { roundTheWheel } from './model.ts';
import type { Figure, State } from './state.ts';

const say = teller(roundTheWheel);
const { min, max } = quantitySpec(roundTheWheel, 'exponent');

/** Life over today’s, in words that a sentence can take: a ratio, never how long. */
function ofTodays(life: number, { system }: State): string {
  const words = lifeWords(life, system);
  if (words === 'as today') return words;
  return words.endsWith('times') ? `${words} today’s` : `${words} of today’s`;
}

function finding(state: State): string {
  const { change, thicknessLife, tensionLife } = state.values;
  if (change === 0) return 'At 0 % change, life is as today. Drag the change.';
  const by = changeWords(change, state.system);
  return `Thickness ${by}: life ${ofTodays(thicknessLife, state)}. Tension ${by}: ${ofTodays(tensionLife, state)}.`;
}

function description(state: State): string {
  const { change, thicknessLife, tensionLife, wheelLife } = state.values;
  const by = changeWords(change, state.system);
  return `Bars of the band’s life against today’s, for a change by ${by} of one thing: of its thickness ${ofTodays(thicknessLife, state)}, of its tension ${ofTodays(tensionLife, state)}, of the wheels ${ofTodays(wheelLife, state)}.`;
}

function notes(state: State): readonly string[] {
  return [
    `assumes that life falls with stress to the power ${say(state, 'exponent')} (${min} to ${max} are as likely): ratios only, no promise`,
    'today: as set above',
  ];
}

function Drawing(state: State) {
  const layout = lifeLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <ChangeRule state={state} layout={layout} />
      <Bars state={state} layout={layout} />
    </Sheet>
  );
}

/** The figure of relative life. */
export const figure: Figure = { finding, description, notes, Drawing };
