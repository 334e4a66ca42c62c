/**
 * How far a hand goes, as an arc from where it began.
 * Units: drawing units; marks of the dial, positive clockwise.
 */

import type { DialPlace } from '../../../figures/dial/Face.tsx';
import { MARKS } from '../../../figures/dial/hands.ts';
import { ArrowHead } from '../../../figures/dimension.tsx';
import { turned } from '../../../figures/turned.ts';

interface TravelArcProps {
  readonly place: DialPlace;
  readonly reach: number;
  readonly from: number;
  /** At most just short of a turn is drawn. */
  readonly marks: number;
  readonly ink: 'hand' | 'steel';
}

const MOST = 0.97 * MARKS;

/** An arc with its arrowhead. */
export function TravelArc({ place, reach, from, marks, ink }: TravelArcProps) {
  const drawn = Math.sign(marks) * Math.min(Math.abs(marks), MOST);
  const [start, end] = [from, from + drawn].map((mark) => turned(place, reach, mark / MARKS));
  if (!start || !end || drawn === 0) return null;
  const isLong = Math.abs(drawn) > MARKS / 2 ? 1 : 0;
  const isClockwise = drawn > 0 ? 1 : 0;
  const along = (360 * (from + drawn)) / MARKS + (drawn > 0 ? 0 : 180);
  return (
    <g>
      <path
        class={`${ink}-line`}
        d={`M${start.x} ${start.y}A${reach} ${reach} 0 ${isLong} ${isClockwise} ${end.x} ${end.y}`}
      />
      <ArrowHead x={end.x} y={end.y} angle={along} ink={ink} />
    </g>
  );
}
