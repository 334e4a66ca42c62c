/**
 * Finding the frame: turns and stretch between two readings, the band's part taken off, and what is left for the frame,
 * as far as the readings can tell.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import type { QuantityOf } from '../../models/define-model.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { framePlotLayout } from './frame/layout.ts';
import { readInTurns } from './frame/parts.tsx';
import { StretchPlot } from './frame/StretchPlot.tsx';
import { MILLS } from './mills.worked.ts';
import { countingTurns } from './model.ts';
import { nutLead } from './nut-travel.ts';
import type { Figure, State } from './state.ts';
import { StiffnessRule } from './turns/StiffnessRule.tsx';

const say = teller(countingTurns);

function finding(state: State): string {
  const { all, band } = readInTurns(state);
  const turns = (value: number) => formatQuantity(value, 'turns', state.system);
  const { resolved, frameLow } = state.values;
  if (frameLow === 0)
    return `${turns(all)} are fewer than the band alone needs, ${turns(band)}: a mark was missed, or the band was not yet rolled round.`;
  const stiffness = (name: QuantityOf<typeof countingTurns>) => say(state, name, 2);
  if (band > all)
    return `The dial shows more than the nut has travelled: the band alone would have taken ${turns(band)} of ${turns(all)}. Read both again; within their doubt the frame is stiffer than ${stiffness('frameLow')}.`;
  if (resolved === 1)
    return `Of ${turns(all)} the band took ${turns(band)}, the frame the rest: it is ${stiffness('frameFound')} stiff, between ${stiffness('frameLow')} and ${stiffness('frameHigh')}.`;
  return `Of ${turns(all)} the band took ${turns(band)}. The rest is no more than the reading may be off by: the frame is stiffer than ${stiffness('frameLow')}, and more the turns cannot say.`;
}

function description(state: State): string {
  const { frameGive } = state.values;
  const way = formatQuantity(Math.abs(frameGive), 'length', state.system, { digits: 2 });
  const side = frameGive < 0 ? 'left' : 'right';
  return `Stretch by the dial against turns of the nut. The reading, ${say(state, 'readStretch')} after ${say(state, 'readTurns')}, lies to the ${side} of the line of a frame that does not give; the way between is ${way} of the nut’s travel, give or take ${say(state, 'giveDoubt', 2)}. Below, the stiffness of the frame that follows.`;
}

function notes(state: State): readonly string[] {
  const mill = MILLS.stiffFrame;
  return [
    `the mill at ${mill.place}, lead of its screw ${formatQuantity(nutLead(mill), 'length', state.system)}`,
    'error bar: how far turns and dial together may easily be off, twice their standard uncertainty',
    'stiffness: each step of the scale is twice to three times the one before',
  ];
}

function Drawing(state: State) {
  const layout = framePlotLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <StretchPlot state={state} layout={layout} />
      <StiffnessRule state={state} layout={layout} />
    </Sheet>
  );
}

/** The second figure of the lesson `counting-turns`. */
export const figure: Figure = { finding, description, notes, Drawing };
