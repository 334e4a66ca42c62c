/**
 * A second opinion: a band swinging between its guides, its section, and its tones on an axis.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { asked, secondOpinion } from './model.ts';
import { BandsAcross } from './pluck/BandsAcross.tsx';
import { pluckLayout } from './pluck/layout.ts';
import { SwingingSpan } from './pluck/SwingingSpan.tsx';
import { ToneAxis } from './pluck/ToneAxis.tsx';
import type { Figure, State } from './state.ts';

const say = teller(secondOpinion);

function finding(state: State): string {
  const other = state.values.band === 'narrow' ? 'wide' : 'narrow';
  return `At ${say(state, 'stress')}, ${say(state, 'span')} of the ${state.values.band} band sounds at ${say(state, 'pitch')}, of the ${other} band at ${say(state, 'otherPitch')}.`;
}

function description(state: State): string {
  return `A band swings between two guides ${say(state, 'span')} apart; its section pulls with ${say(state, 'strandPull')}, that of the other band with ${say(state, 'otherPull')}. Below, an axis of frequency with its first three tones, ${say(state, 'pitch')}, ${say(state, 'secondTone')} and ${say(state, 'thirdTone')}.`;
}

function notes({ system, guess }: State): readonly string[] {
  const [stress, span] = [
    formatQuantity(asked.stress, 'stress', system),
    formatQuantity(asked.span, 'length', system),
  ];
  return [
    'swing drawn larger; span and sections each to scale',
    'toothed zone taken as half full of steel',
    ...(guess === undefined ? [] : [`guess and truth: for ${stress} on ${span}`]),
  ];
}

function Drawing(state: State) {
  const layout = pluckLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <SwingingSpan state={state} layout={layout} />
      <BandsAcross state={state} layout={layout} />
      <ToneAxis state={state} layout={layout} />
    </Sheet>
  );
}

/** The first figure of the lesson `second-opinion`. */
export const figure: Figure = { finding, description, notes, Drawing };
