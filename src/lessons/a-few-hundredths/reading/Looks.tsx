/**
 * The looks at the dial: on a wide page a dial for each, on a phone one dial with the hands of both.
 * Units: marks of the dial; drawing units otherwise.
 */
import { Dial, type Look } from '../../../figures/dial/Dial.tsx';
import type { DialPlace } from '../../../figures/dial/Face.tsx';
import { MARKS } from '../../../figures/dial/hands.ts';
import { turned } from '../../../figures/turned.ts';
import type { State } from '../state.ts';
import type { ReadingLayout } from './layout.ts';
import { pictureOf } from './picture.ts';

const OUTSIDE = 8; // from the edge to a word beside it
const SIDEWAYS = 0.25; // sine from which a word stands beside, and not above or below

/** Which hand is which, beside its tip. */
function HandWord({ place, look }: { readonly place: DialPlace; readonly look: Look }) {
  const turns = look.position / MARKS;
  const { x, y } = turned(place, place.radius + OUTSIDE, turns);
  const [sine, cosine] = [Math.sin(2 * Math.PI * turns), Math.cos(2 * Math.PI * turns)];
  const anchor = Math.abs(sine) < SIDEWAYS ? 'middle' : sine > 0 ? 'start' : 'end';
  return (
    <text
      class={look.when === 'now' ? 'steel' : undefined}
      x={x}
      y={y + 5 - 5 * cosine}
      text-anchor={anchor}
    >
      {look.when}
    </text>
  );
}

/** All looks that the reader has asked for. */
export function Looks({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: ReadingLayout;
}) {
  const { before, now } = pictureOf(state.values.picture);
  const isTwo = state.values.look === 'two';
  const first: Look = { when: 'before', position: before };
  const second: Look = { when: 'now', position: now };
  if (!isTwo) return <Dial place={layout.one} looks={[second]} />;
  if (layout.narrow)
    return (
      <g>
        <Dial place={layout.now} looks={[first, second]} />
        <HandWord place={layout.now} look={first} />
        <HandWord place={layout.now} look={second} />
      </g>
    );
  return (
    <g>
      <Dial place={layout.before} looks={[first]} />
      <Dial place={layout.now} looks={[second]} />
      <text x={layout.before.x} y={18} text-anchor="middle">
        before
      </text>
      <text class="steel" x={layout.now.x} y={18} text-anchor="middle">
        now
      </text>
    </g>
  );
}
