/**
 * What guides are for: how firmly the teeth are held, as the guides move apart without end.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { holdLayout } from './hold/layout.ts';
import { SpacingPlot } from './hold/SpacingPlot.tsx';
import { whatTensionBuys } from './model.ts';
import type { Figure, State } from './state.ts';

const say = teller(whatTensionBuys);

const finding = (state: State): string =>
  `With guides ${say(state, 'far')} apart, the span holds its teeth with ${say(state, 'farHold', 2)}; at your ${say(state, 'span')}, with ${say(state, 'hold', 2)}.`;

const description = (state: State): string =>
  `A curve of the push that each bit of the teeth’s movement takes, over the guide spacing, at ${say(state, 'stress')}. It falls from ${say(state, 'hold', 2)} at ${say(state, 'span')} to ${say(state, 'farHold', 2)} at ${say(state, 'far')}, and on toward nothing.`;

const notes = (state: State): readonly string[] => [
  `the free strand at Ottersleigh is ${say(state, 'strand')} long: no mill has the spacings beyond`,
  `at your tension, ${say(state, 'stress')}; a push on a standing band`,
];

function Drawing(state: State) {
  const layout = holdLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <SpacingPlot state={state} layout={layout} />
    </Sheet>
  );
}

/** The figure of guides that move apart without end. */
export const figure: Figure = { finding, description, notes, Drawing };
