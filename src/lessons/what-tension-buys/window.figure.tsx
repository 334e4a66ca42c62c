/**
 * What tension buys: the window between what the cut asks for and what band and mill bear, with the edges that bind.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { whatTensionBuys } from './model.ts';
import type { Figure, State } from './state.ts';
import { EdgeBars } from './window/EdgeBars.tsx';
import { edgeText, windowText } from './window/edge-text.ts';
import { windowLayout } from './window/layout.ts';
import { CAUSES, rowsOf } from './window/rows.ts';
import { YourTension } from './window/YourTension.tsx';

const say = teller(whatTensionBuys);

function finding(state: State): string {
  const { low, high } = rowsOf(state).window;
  const { stress, lowEdge, highEdge, isOpen } = state.values;
  if (!low || !high) throw new RangeError('low and high must be among the edges');
  const [lower, upper] = [CAUSES[low.cause], CAUSES[high.cause]];
  const { system } = state;
  if (isOpen === 0)
    return `No tension fits: ${lower.name} asks for ${edgeText(lowEdge, system)} or more, ${upper.name} allows ${edgeText(highEdge, system)} at most.`;
  const range = windowText(lowEdge, highEdge, system);
  const own = say(state, 'stress');
  if (stress < lowEdge) return `${own} is below the window, ${range}: ${lower.beyond}.`;
  if (stress > highEdge) return `${own} is above the window, ${range}: ${upper.beyond}.`;
  return `The window is ${range}: ${lower.name} sets the low edge, ${upper.name} the high one.`;
}

function description(state: State): string {
  const edges = rowsOf(state).rows.map(
    ({ name, isLow, because, stress }) =>
      `${name} ${isLow ? 'at least' : 'at most'} ${edgeText(stress, state.system)} (${because})`,
  );
  return `A scale of tension with five edges: ${edges.join('; ')}. Your tension is ${say(state, 'stress')}.`;
}

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
