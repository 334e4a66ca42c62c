/**
 * From a note to a stress: the curve of the span, the reader's note and what it tells.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { workingStress } from '../../core/assumptions.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';
import { listenLayout } from './listen/layout.ts';
import { NotePlot } from './listen/NotePlot.tsx';
import { secondOpinion } from './model.ts';
import type { Figure, State } from './state.ts';

const say = teller(secondOpinion);

function words(state: State) {
  const { values, system } = state;
  const { note, noteWidth, noteStress, noteExpanded } = values;
  return {
    note: formatQuantity(note, 'frequency', system, { uncertainty: noteWidth }),
    stress: formatQuantity(noteStress, 'stress', system, { uncertainty: noteExpanded }),
    span: say(state, 'span'),
  };
}

function finding(state: State): string {
  const { note, stress, span } = words(state);
  if (state.values.isTooLow)
    return `${note} is too low. Below ${say(state, 'lowestNote')}, ${span} of band is too stiff to tell.`;
  return `A note of ${note} on ${span} means ${stress}.`;
}

function description(state: State): string {
  const { note, stress, span } = words(state);
  return `Stress against the note of a span of ${span}, a curve that rises with the square of the note. The note ${note} leads up to ${stress} on it.`;
}

function notes({ system }: State): readonly string[] {
  const range = formatRange(workingStress.low, workingStress.high, 'stress', system);
  return [
    'span and band as set in the figure above',
    '± : 95 %, with the span by ruler, the hold of the guides, the weight of the teeth',
    `shaded: in use on small mills, ${range} (common practice, no source)`,
  ];
}

function Drawing(state: State) {
  const layout = listenLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <NotePlot state={state} layout={layout} />
    </Sheet>
  );
}

/** The second figure of the lesson `second-opinion`. */
export const figure: Figure = { finding, description, notes, Drawing };
