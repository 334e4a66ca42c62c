/**
 * The steel in the section: the band on its flank and cut through, and the round rod with as much steel, all to one
 * scale.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { BandCut, BandElevation } from './BandElevation.tsx';
import { steelInTheSection, TEETH } from './model.ts';
import { RoundRod } from './RoundRod.tsx';
import { sectionLayout } from './section-layout.ts';
import type { Figure, State } from './state.ts';

const say = teller(steelInTheSection);

function finding(state: State): string {
  return `${say(state, 'area')} of steel carry the load: at ${say(state, 'targetStress')} each strand pulls ${say(state, 'strandForce')}.`;
}

function description(state: State): string {
  return `A saw band seen on its flank with its teeth, ${say(state, 'widthOverTeeth')} over the teeth, and below it its section, hatched over the body width of ${say(state, 'bodyWidth')}; beside it a round rod with as much steel, ${say(state, 'rodDiameter', 2)} thick. Two strands of ${say(state, 'strandForce')} each pull with ${say(state, 'wheelForce')} on the wheel.`;
}

function notes(state: State): readonly string[] {
  return [
    'flank, section and rod to one scale',
    `teeth every ${formatQuantity(TEETH.pitch, 'length', state.system)}, set drawn as ${formatQuantity(TEETH.set, 'thickness', state.system)} to each side`,
    `measured over the teeth, the section would seem ${say(state, 'catalogueExcess', 2)} larger`,
  ];
}

function Drawing(state: State) {
  const layout = sectionLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <RoundRod state={state} layout={layout} />
      <BandCut state={state} layout={layout} />
      <BandElevation state={state} layout={layout} />
    </Sheet>
  );
}

/** The first figure of the lesson `steel-in-the-section`. */
export const figure: Figure = { finding, description, notes, Drawing };
