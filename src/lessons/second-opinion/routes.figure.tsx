/**
 * Three routes to one stress beside each other, with a mistake on one of them, and which pairs notice it.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { secondOpinion } from './model.ts';
import { routesLayout } from './routes/layout.ts';
import { MISTAKE_WORDS } from './routes/mistakes.ts';
import { Pairs, pairsOf } from './routes/Pairs.tsx';
import { routesOf, ThreeRoutes } from './routes/ThreeRoutes.tsx';
import type { Figure, State } from './state.ts';

const say = teller(secondOpinion);

const stresses = (state: State) =>
  routesOf(state).map(
    ({ name, stress, expanded }) =>
      `${name} ${formatQuantity(stress, 'stress', state.system, { uncertainty: expanded })}`,
  );

function finding(state: State): string {
  const apart = pairsOf(state).filter(({ agrees }) => !agrees);
  if (apart.length === 0) return `All three agree: ${stresses(state).join(', ')}.`;
  const pairs = apart.map(({ names }) => names.join(' and ')).join('; ');
  const mistake = MISTAKE_WORDS[state.values.mistake];
  return `With the ${mistake}, ${apart.length} of 3 pairs ${apart.length > 1 ? 'disagree' : 'disagrees'}: ${pairs}.`;
}

function description(state: State): string {
  const pairs = pairsOf(state).map(
    ({ names, agrees }) => `${names.join(' and ')} ${agrees ? 'agree' : 'disagree'}`,
  );
  return `Three stresses with their intervals on one axis: ${stresses(state).join(', ')}. ${pairs.join(', ')}.`;
}

function notes(state: State): readonly string[] {
  return [
    'the invented mill at Ottersleigh at its top torque; bars: 95 %',
    `mistakes: section ${say(state, 'sectionTimes')} too large (shows from ${say(state, 'seenByNote')} on), zero ${say(state, 'zeroError')} too low, span ${say(state, 'spanError')} too long`,
  ];
}

function Drawing(state: State) {
  const layout = routesLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <ThreeRoutes state={state} layout={layout} />
      <Pairs state={state} layout={layout} />
    </Sheet>
  );
}

/** The fourth figure of the lesson `second-opinion`. */
export const figure: Figure = { finding, description, notes, Drawing };
