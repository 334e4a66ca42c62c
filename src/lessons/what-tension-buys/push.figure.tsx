/**
 * What tension buys: three spans at three tensions under one push, the boards that they leave, and how far the teeth moved.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { asked, whatTensionBuys } from './model.ts';
import { BOARD } from './push/Board.tsx';
import { GuessAndTruth } from './push/GuessAndTruth.tsx';
import { pushLayout } from './push/layout.ts';
import { TeethBars } from './push/TeethBars.tsx';
import { ThreeSpans } from './push/ThreeSpans.tsx';
import type { Figure, State } from './state.ts';

const say = teller(whatTensionBuys);

function finding(state: State): string {
  return `Twice the tension takes ${say(state, 'doubledSaves', 2)} off the teeth’s movement; half the guide spacing, ${say(state, 'closerSaves', 2)}.`;
}

function description(state: State): string {
  return `A band between two guides ${say(state, 'span')} apart, pushed at its teeth by ${say(state, 'push', 2)}, at three tensions. At ${say(state, 'stress')} the teeth move ${say(state, 'teeth', 2)}, ${say(state, 'twistShare', 2)} of it by twist; at ${say(state, 'halfStress')}, ${say(state, 'halfTeeth', 2)}; at ${say(state, 'quarterStress')}, ${say(state, 'quarterTeeth', 2)}. With the guides half as far apart it is ${say(state, 'closerTeeth', 2)} at ${say(state, 'stress')}. Boards beside them show the wander.`;
}

function notes({ system, narrow, guess }: State): readonly string[] {
  const { perMovement, perLength, board } = pushLayout(narrow);
  const times = (factor: number) => formatQuantity(factor, 'ratio', system);
  const [stress, span] = [
    formatQuantity(asked.stress, 'stress', system),
    formatQuantity(asked.span, 'length', system),
  ];
  return [
    `end-on to scale; movement × ${times(perMovement / perLength)} beside the span, wander × ${times(perMovement / board.perThickness)} beside a board of ${formatQuantity(BOARD, 'length', system, { digits: 2 })}`,
    'a push on a standing band: feed, motion and the length of the wander are not worked out',
    ...(guess === undefined ? [] : [`guess and truth: for ${stress} on ${span}`]),
  ];
}

function Drawing(state: State) {
  const layout = pushLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <ThreeSpans state={state} layout={layout} />
      <TeethBars state={state} layout={layout} />
      <GuessAndTruth state={state} layout={layout} />
    </Sheet>
  );
}

/** The first figure of the lesson `what-tension-buys`. */
export const figure: Figure = { finding, description, notes, Drawing };
