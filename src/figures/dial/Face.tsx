/**
 * The face of a dial indicator: a hundred marks, every fifth longer, every tenth with its number, and the small dial that
 * counts the turns. It lies over the big hand, so that the hand never crosses a number.
 * Units: drawing units; positions in marks.
 */
import type { ComponentChildren } from 'preact';
import { turned } from '../turned.ts';
import { MARKS } from './hands.ts';

/** Where a dial is drawn, and how large. */
export interface DialPlace {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

const TURNS = 10; // of the small dial
const RIM = { numbers: 13, outside: 24, ones: 31, fives: 35, tens: 38 }; // from the edge inwards

const SMALL_LETTERS = 12;

/** Where the big hand's tip ends, from the edge inwards. */
export const TIP = 27;

/** The small dial within its big one. */
export function counterOf({ x, y, radius }: DialPlace): DialPlace {
  return { x: x - 0.37 * radius, y, radius: 0.265 * radius };
}

/** Strokes from one ring to another at each of some marks. */
function strokes(
  place: DialPlace,
  marks: readonly number[],
  of: number,
  outer: number,
  inner: number,
) {
  const ends = marks.map((mark) =>
    [outer, inner].map((reach) => {
      const { x, y } = turned(place, reach, mark / of);
      return `${x.toFixed(2)} ${y.toFixed(2)}`;
    }),
  );
  return ends.map(([from, to]) => `M${from}L${to}`).join('');
}

const upTo = (count: number) => Array.from({ length: count }, (_, place) => place);

interface NumbersProps {
  readonly place: DialPlace;
  readonly reach: number;
  readonly step: number;
  readonly drop: number;
  readonly size?: number | undefined;
}

/** Ten numbers round a dial, in the drawing's own size of letters where no other is given. */
function Numbers({ place, reach, step, drop, size }: NumbersProps) {
  return (
    <g font-size={size}>
      {upTo(10).map((number) => {
        const { x, y } = turned(place, reach, number / 10);
        return (
          <text key={number} x={x} y={y + drop} text-anchor="middle">
            {number * step}
          </text>
        );
      })}
    </g>
  );
}

function Marks({ place }: { readonly place: DialPlace }) {
  const { radius } = place;
  const [tens, rest] = [
    upTo(10).map((ten) => 10 * ten),
    upTo(MARKS).filter((mark) => mark % 10 !== 0),
  ];
  const fives = rest.filter((mark) => mark % 5 === 0);
  const ones = rest.filter((mark) => mark % 5 !== 0);
  const outside = radius - RIM.outside;
  return (
    <g>
      <path class="outline" d={strokes(place, tens, MARKS, outside, radius - RIM.tens)} />
      <path class="thin" d={strokes(place, fives, MARKS, outside, radius - RIM.fives)} />
      <path class="thin" d={strokes(place, ones, MARKS, outside, radius - RIM.ones)} />
    </g>
  );
}

interface DialFaceProps {
  readonly place: DialPlace;
  /** The big hands, which lie under the small dial, and the small ones on it. */
  readonly hands: ComponentChildren;
  readonly smallHands: ComponentChildren;
}

/** The face with its hands. */
export function DialFace({ place, hands, smallHands }: DialFaceProps) {
  const { x, y, radius } = place;
  const counter = counterOf(place);
  return (
    <g>
      <circle class="outline paper-fill" cx={x} cy={y} r={radius} />
      <circle class="grid" cx={x} cy={y} r={radius - 4} />
      <Marks place={place} />
      <Numbers place={place} reach={radius - RIM.numbers} step={10} drop={5} />
      {hands}
      <circle class="thin paper-fill" cx={counter.x} cy={counter.y} r={counter.radius} />
      <path
        class="thin"
        d={strokes(counter, upTo(TURNS), TURNS, counter.radius, counter.radius - 4)}
      />
      <Numbers place={counter} reach={counter.radius - 10} step={1} drop={4} size={SMALL_LETTERS} />
      {smallHands}
    </g>
  );
}
