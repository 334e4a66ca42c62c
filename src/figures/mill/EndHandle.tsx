/**
 * The mill's handle seen along the screw, as it stands after so many turns, with the angle turned since there was no
 * tension and the push of the hand, an arrow as long as the torque.
 * Units: drawing units; turns.
 */
import { ForceArrow } from '../ForceArrow.tsx';
import { turned } from '../turned.ts';

/** From the middle of a grip on the handle's end to where the push begins. */
const GRIP_HALF = 17;

interface EndHandleProps {
  readonly centre: { readonly x: number; readonly y: number };
  readonly reach: number;
  /** Radius of the hub. */
  readonly hub: number;
  readonly turns: number;
  /** Length of the arrow. */
  readonly push: number;
}

/** The circle that the end runs on, with a mark at each quarter of a turn. */
function Track({ centre: { x, y }, reach }: Pick<EndHandleProps, 'centre' | 'reach'>) {
  const [near, far] = [reach - 3, reach + 3];
  const marks = `M${x} ${y - near}V${y - far}M${x} ${y + near}V${y + far}M${x - near} ${y}H${x - far}M${x + near} ${y}H${x + far}`;
  return (
    <g>
      <circle class="centre" cx={x} cy={y} r={reach} />
      <path class="thin" d={marks} />
    </g>
  );
}

/** Angle, bar, hub and push. */
export function EndHandle({ centre, reach, hub, turns, push }: EndHandleProps) {
  const { x, y } = centre;
  const radius = reach * 0.62;
  const to = turned(centre, radius, turns);
  const large = turns % 1 > 0.5 ? 1 : 0;
  return (
    <g>
      <Track centre={centre} reach={reach} />
      <path
        class="hand-wash"
        d={`M${x} ${y}V${y - radius}A${radius} ${radius} 0 ${large} 1 ${to.x} ${to.y}Z`}
      />
      <g transform={`rotate(${360 * turns} ${x} ${y})`}>
        <rect
          class="hand-line paper-fill"
          x={x - hub * 0.4}
          y={y - reach}
          width={hub * 0.8}
          height={2 * reach}
        />
        <circle class="outline paper-fill" cx={x} cy={y} r={hub} />
        <g data-sym="torque">
          <ForceArrow x={x + GRIP_HALF} y={y - reach} length={push} ink="hand" />
        </g>
      </g>
    </g>
  );
}
