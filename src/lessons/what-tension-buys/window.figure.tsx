/**
 * What tension buys: the window between what the cut asks for and what band and mill bear, with the edges that bind.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatRange } from '../../units/format-quantity.ts';
import { whatTensionBuys } from './model.ts';
import type { Figure, State } from './state.ts';
import { EdgeBars } from './window/EdgeBars.tsx';
import { windowLayout } from './window/layout.ts';
import { NAMES, rowsOf } from './window/rows.ts';
import { YourTension } from './window/YourTension.tsx';

const say = teller(whatTensionBuys);

function finding(state: State): string {
  const { low, high } = rowsOf(state).window;
  const { stress, lowEdge, highEdge, isOpen } = state.values;
  const [lower, upper] = [low ? NAMES[low.cause] : '', high ? NAMES[high.cause] : ''];
  if (isOpen === 0)
    return `No tension fits: ${lower} asks for ${say(state, 'lowEdge', 2)} or more, ${upper} allows ${say(state, 'highEdge', 2)} at most.`;
  const range = formatRange(lowEdge, highEdge, 'stress', state.system);
  if (stress < lowEdge)
    return `${say(state, 'stress')} is below the window, ${range}: too slack for ${lower}.`;
  if (stress > highEdge)
    return `${say(state, 'stress')} is above the window, ${range}: more than ${upper} allows.`;
  return `The window is ${range}: ${lower} sets its low edge, ${upper} its high edge.`;
}

function description(state: State): string {
  const { rows } = rowsOf(state);
  const edges = rows.map(
    ({ name, isLow, because }, place) =>
      `${name} ${isLow ? 'at least' : 'at most'} ${say(state, EDGES[place] ?? 'lowEdge', 2)} (${because})`,
  );
  return `A scale of tension with five edges: ${edges.join('; ')}. Your tension is ${say(state, 'stress')}.`;
}

const EDGES = ['straightEdge', 'gripEdge', 'lifeEdge', 'millEdge', 'yieldEdge'] as const;

function notes(state: State): readonly string[] {
  return [
    'hatched: not allowed; where no bar is hatched is the window',
    `guides ${say(state, 'span')} apart, cutting power ${say(state, 'power', 2)}, rim friction ${say(state, 'friction')}`,
    `life: a ratio to that at ${say(state, 'today')}, by an assumed exponent; no promise of hours`,
  ];
}

function Drawing(state: State) {
  const layout = windowLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <EdgeBars state={state} layout={layout} />
      <YourTension state={state} layout={layout} />
    </Sheet>
  );
}

/** The third figure of the lesson `what-tension-buys`. */
export const figure: Figure = { finding, description, notes, Drawing };
