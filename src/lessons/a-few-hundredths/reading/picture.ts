/**
 * Two looks at a dial, drawn by chance from the number of the picture: a zero passed more often than not, now and then a
 * whole turn more. A position is the marks that the big hand has passed since the small one stood at 0, to half a mark.
 * Units: marks of the dial, a hundred to a turn.
 * Source: invented.
 */
import { randomSource } from '../../../core/random.ts';
import { MARKS } from '../../../figures/dial/hands.ts';

/** Where the dial stood, and stands. */
export interface Picture {
  readonly before: number;
  readonly now: number;
}

const BACKWARDS = 0.65; // share of the pictures in which the hand runs that way
const PASSES_ZERO = 0.7;
const MORE_THAN_A_TURN = 0.3;

const FIRST = 235; // the seed before that of the first picture: a short way back past zero

const inHalves = (marks: number) => Math.round(2 * marks) / 2;

/** The picture of a number, the same one each time. */
export function pictureOf(number: number): Picture {
  const { uniform } = randomSource(FIRST + Math.round(number));
  const chance = (share: number) => uniform() < share;
  const between = (least: number, most: number) => inHalves(least + uniform() * (most - least));
  const way = chance(BACKWARDS) ? -1 : 1;
  const within = between(8, 60);
  const moved = within + (chance(MORE_THAN_A_TURN) ? MARKS : 0);
  const passesZero = chance(PASSES_ZERO);
  const fromZero = passesZero ? -between(2, within - 2) : between(2, 38); // marks, the way that the hand runs
  const before = Math.floor(between(3, 7)) * MARKS + way * fromZero;
  return { before, now: before + way * moved };
}
