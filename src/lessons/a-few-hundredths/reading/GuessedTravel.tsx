/**
 * The reader's guess beside the truth, on the dial of the first picture, which the guess was about.
 * Units: m in the state; drawing units otherwise.
 */

import { unitsOfFace } from '../../../figures/dial/faces.ts';
import { defaults } from '../../../models/define-model.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { aFewHundredths } from '../model.ts';
import type { State } from '../state.ts';
import type { ReadingLayout } from './layout.ts';
import { pictureOf } from './picture.ts';
import { TravelArc } from './TravelArc.tsx';

const ARCS = { truth: 42, guess: 47 }; // from the edge inwards

/** Whether there is a guess, and the picture is the one that it was about. */
export function isGuessed({ values, guess, system }: State): boolean {
  const { picture, look, face } = defaults(aFewHundredths, system);
  const isSame = values.picture === picture && values.look === look && values.face === face;
  return guess !== undefined && isSame;
}

/** Both as arcs from where the hand began, and under the dial as numbers. */
export function GuessedTravel({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: ReadingLayout;
}) {
  const { values, guess = 0 } = state;
  const { before, now } = pictureOf(values.picture);
  const way = Math.sign(now - before);
  const { now: place, width, foot, left } = layout;
  const say = (length: number) => formatQuantity(length, 'stretch', unitsOfFace(values.face));
  const arc = { place, from: before };
  return (
    <g>
      <TravelArc {...arc} reach={place.radius - ARCS.truth} marks={now - before} ink="steel" />
      <TravelArc
        {...arc}
        reach={place.radius - ARCS.guess}
        marks={(way * guess) / values.markTravel}
        ink="hand"
      />
      <text class="hand" x={left} y={foot}>
        your guess {say(guess)}
      </text>
      <text class="steel" x={width - left} y={foot} text-anchor="end">
        the truth {say(values.moved)}
      </text>
    </g>
  );
}
