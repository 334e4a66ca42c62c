/**
 * A weight on the free strand: how far the band gives way, and the stress that this tells.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { secondOpinion } from './model.ts';
import { pressLayout } from './press/layout.ts';
import { PressedStrand } from './press/PressedStrand.tsx';
import type { Figure, State } from './state.ts';

const say = teller(secondOpinion);

function finding(state: State): string {
  const { pressStress, pressExpanded, deflection, mostDeflection } = state.values;
  const stress = formatQuantity(pressStress, 'stress', state.system, {
    uncertainty: pressExpanded,
  });
  const moved = `${say(state, 'weight')} moves the strand ${say(state, 'deflection')}`;
  if (deflection > mostDeflection) return `${moved}, too far to tell the stress. Take less weight.`;
  return `${moved}: it carries ${stress}.`;
}

function description(state: State): string {
  return `A band round two wheels, ${say(state, 'strandSpan')} apart. A weight of ${say(state, 'weight')} hangs from the middle of the upper strand and moves it by ${say(state, 'deflection')}; the strand pulls with ${say(state, 'pressPull')}.`;
}

function notes(state: State): readonly string[] {
  return [
    `wheels and strand to scale; movement drawn × ${pressLayout(state.narrow).times}`,
    `a bare string would carry ${say(state, 'pressStringStress')}; bending, and the stretch that the weight adds, take ${say(state, 'pressCorrection', 2)} off`,
    '± : 95 %, with scale, ruler and section',
  ];
}

function Drawing(state: State) {
  const layout = pressLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <PressedStrand state={state} layout={layout} />
    </Sheet>
  );
}

/** The third figure of the lesson `second-opinion`. */
export const figure: Figure = { finding, description, notes, Drawing };
