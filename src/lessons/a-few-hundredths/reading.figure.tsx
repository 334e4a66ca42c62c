/**
 * A dial to be read: what it shows, or how far it has moved since the look before. What is asked is drawn, and never
 * told in digits until it is answered.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { type Face, markOf, turnOf, unitsOfFace } from '../../figures/dial/faces.ts';
import { bigHand, smallHand } from '../../figures/dial/positions.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import { GuessedTravel, isGuessed } from './reading/GuessedTravel.tsx';
import { Looks } from './reading/Looks.tsx';
import { type ReadingLayout, readingLayout } from './reading/layout.ts';
import { pictureOf } from './reading/picture.ts';
import type { Figure, State } from './state.ts';

const said = (length: number, face: Face) => formatQuantity(length, 'thickness', unitsOfFace(face));

const wayOf = ({ values }: State) => {
  const { before, now } = pictureOf(values.picture);
  return now < before ? 'backwards' : 'forwards';
};

function finding(state: State): string {
  const { picture, look } = state.values;
  const name = `Picture ${Math.round(picture)}`;
  if (look === 'one') return `${name}: read the dial, whole turns and marks together.`;
  return `${name}: the hand ran ${wayOf(state)} from “before” to “now”. Find how far it moved.`;
}

function description(state: State): string {
  const { before, now } = pictureOf(state.values.picture);
  const hands = (position: number) =>
    `the big hand is ${bigHand(position)}, the small hand ${smallHand(position)}`;
  const dial =
    'The face of a dial with a hundred marks, numbered by tens clockwise from 0 at the top, and a small dial that counts turns from 0 to 9.';
  if (state.values.look === 'one') return `${dial} On it ${hands(now)}.`;
  return `${dial} Before, ${hands(before)}. Now, ${hands(now)}. Between the two the hand ran ${wayOf(state)}.`;
}

function notes({ values: { face } }: State): readonly string[] {
  return [
    `one mark is ${said(markOf(face), face)}, one turn of the big hand ${said(turnOf(face), face)}`,
  ];
}

/** What a mark and a turn are, under the dial. */
function Scale({ face, layout }: { readonly face: Face; readonly layout: ReadingLayout }) {
  const { foot, left, width } = layout;
  return (
    <g>
      <text class="note" x={left} y={foot}>
        one mark {said(markOf(face), face)}
      </text>
      <text class="note" x={width - left} y={foot} text-anchor="end">
        one turn {said(turnOf(face), face)}
      </text>
    </g>
  );
}

function Drawing(state: State) {
  const layout = readingLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <Looks state={state} layout={layout} />
      {isGuessed(state) ? (
        <GuessedTravel state={state} layout={layout} />
      ) : (
        <Scale face={state.values.face} layout={layout} />
      )}
    </Sheet>
  );
}

/** The first figure of the lesson `a-few-hundredths`. */
export const figure: Figure = { finding, description, notes, Drawing };
