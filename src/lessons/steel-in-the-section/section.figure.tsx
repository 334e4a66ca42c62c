/**
 * The steel in the section: the band on its flank and cut through, true to scale, and the wheel that its two strands
 * pull at.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { BandCut, BandElevation } from './BandElevation.tsx';
import { TEETH } from './model.ts';
import { sectionLayout } from './section-layout.ts';
import { WheelPull } from './WheelPull.tsx';

const say = ({ values, system }: FigureState, name: string, kind: QuantityKind, digits?: number) =>
  formatQuantity(values[name] ?? 0, kind, system, { digits });

function finding(state: FigureState): string {
  const body = `${say(state, 'bodyWidth', 'length')} of body, ${say(state, 'thickness', 'thickness')} thick`;
  return `${body}, is ${say(state, 'area', 'area')} of steel: at ${say(state, 'targetStress', 'stress')} each strand pulls ${say(state, 'strandForce', 'force')}.`;
}

function description(state: FigureState): string {
  return `A saw band seen on its flank with its teeth, ${say(state, 'widthOverTeeth', 'length')} over the teeth, and below it its section, hatched over the body width of ${say(state, 'bodyWidth', 'length')}; beside it a wheel with two strands of ${say(state, 'strandForce', 'force')} each and ${say(state, 'wheelForce', 'force')} on the wheel.`;
}

function notes(state: FigureState): readonly string[] {
  return [
    'band and teeth true to scale, flank and section alike',
    `teeth every ${formatQuantity(TEETH.pitch, 'length', state.system)}, set drawn as ${formatQuantity(TEETH.set, 'thickness', state.system)} to each side`,
    `by the width over the teeth the section would seem ${say(state, 'catalogueExcess', 'percent', 2)} larger`,
  ];
}

function Drawing(state: FigureState) {
  const layout = sectionLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <WheelPull state={state} layout={layout} />
      <BandCut state={state} layout={layout} />
      <BandElevation state={state} layout={layout} />
    </Sheet>
  );
}

/** The first figure of the lesson `steel-in-the-section`. */
export const figure: FigureModule = { finding, description, notes, Drawing };
