/**
 * The looks at the dial: on a wide page a dial for each, on a phone one dial with the hands of both.
 * Units: marks of the dial; drawing units otherwise.
 */
import { turned } from '../../../figures/turned.ts';
import type { State } from '../state.ts';
import { counterOf, DialFace, type DialPlace, TIP } from './DialFace.tsx';
import { DialHand } from './DialHand.tsx';
import type { ReadingLayout } from './layout.ts';
import { MARKS, pictureOf } from './picture.ts';

/** A look: when, and where the dial stood. */
interface Look {
  readonly when: 'before' | 'now';
  readonly position: number;
}

const OUTSIDE = 8; // from the edge to a word beside it
const SMALL_TIP = 16; // from the small dial's edge to the tip of its hand
const SIDEWAYS = 0.25; // sine from which a word stands beside, and not above or below

interface HandsProps {
  readonly looks: readonly Look[];
  readonly at: DialPlace;
  readonly reach: number;
  /** Marks that take a hand once round. */
  readonly perTurn: number;
}

interface DialProps {
  readonly place: DialPlace;
  readonly looks: readonly Look[];
}

/** The hands of some looks about one middle; a small one before is wider, to be seen behind the other. */
function Hands({ looks, at, reach, perTurn }: HandsProps) {
  const isSmall = perTurn > MARKS;
  const wide = (when: Look['when']) => (isSmall && when === 'now' ? 1.5 : 4);
  return (
    <g>
      {looks.map(({ when, position }) => (
        <DialHand
          key={when}
          x={at.x}
          y={at.y}
          reach={reach}
          turns={position / perTurn}
          isBefore={when === 'before'}
          wide={wide(when)}
          tail={isSmall ? 0 : 18}
        />
      ))}
      <circle class="ink-fill" cx={at.x} cy={at.y} r={isSmall ? 2.5 : 5} />
    </g>
  );
}

/** A dial with the hands of some looks. */
function Dial({ place, looks }: DialProps) {
  const small = counterOf(place);
  return (
    <DialFace
      place={place}
      hands={<Hands looks={looks} at={place} reach={place.radius - TIP} perTurn={MARKS} />}
      smallHands={
        <Hands looks={looks} at={small} reach={small.radius - SMALL_TIP} perTurn={10 * MARKS} />
      }
    />
  );
}

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
