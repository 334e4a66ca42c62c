/**
 * A dial with the hands of one look, or of two.
 * Units: marks of the dial; drawing units otherwise.
 */
import { counterOf, DialFace, type DialPlace, TIP } from './Face.tsx';
import { DialHand } from './Hand.tsx';
import { MARKS } from './hands.ts';

/** A look: when, and where the dial stood. */
export interface Look {
  readonly when: 'before' | 'now';
  readonly position: number;
}

const SMALL_TIP = 16; // from the small dial's edge to the tip of its hand

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
export function Dial({ place, looks }: DialProps) {
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
