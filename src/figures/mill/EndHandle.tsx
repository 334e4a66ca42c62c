/**
 * The mill's handle seen along the screw, as it stands after so many turns, with the angle turned since there was no
 * tension, the push of the hand, an arrow as long as the torque, and the grip that turns it.
 * Units: drawing units; turns; N·m.
 */
import type { Model, QuantityInputOf } from '../../models/define-model.ts';
import { ForceArrow } from '../ForceArrow.tsx';
import type { FigureState } from '../figure.ts';
import { TurnGrip } from '../TurnGrip.tsx';
import { turned } from '../turned.ts';
import type { MillLayout } from './layout.ts';

/** From the middle of a grip on the handle's end to where the push begins. */
const GRIP_HALF = 17;

interface BarProps {
  readonly centre: { readonly x: number; readonly y: number };
  readonly reach: number;
  /** Radius of the hub. */
  readonly hub: number;
  readonly turns: number;
  /** Length of the arrow. */
  readonly push: number;
}

/** The circle that the end runs on, with a mark at each quarter of a turn. */
function Track({ centre: { x, y }, reach }: Pick<BarProps, 'centre' | 'reach'>) {
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
function Bar({ centre, reach, hub, turns, push }: BarProps) {
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
        data-sym="turns"
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

interface EndHandleProps<M extends Model> {
  readonly model: M;
  readonly state: FigureState<M>;
  /** What the grip sets, and how much of it a turn is. */
  readonly input: QuantityInputOf<M>;
  readonly perTurn: number;
  readonly layout: MillLayout;
  readonly turns: number;
  readonly torque: number;
}

/** The handle with its grip. */
export function EndHandle<M extends Model>(props: EndHandleProps<M>) {
  const { model, state, input, perTurn, layout, turns, torque } = props;
  const { end, beam, perTorque } = layout;
  return (
    <g>
      <Bar
        centre={end}
        reach={end.reach}
        hub={beam * 0.9}
        turns={turns}
        push={torque * perTorque}
      />
      <TurnGrip
        model={model}
        state={state}
        input={input}
        perTurn={perTurn}
        label="Turn the handle"
        arm={end}
        turns={turns}
      />
    </g>
  );
}

/** What this view is, on a wide sheet; and on a screen, what to do with it. */
export function EndHandleWords({ end: { x, y, reach }, narrow }: MillLayout) {
  const top = y - reach - 28;
  const invitation = narrow
    ? ({ x: x - reach - 8, y: y - reach + 4, anchor: 'end' } as const)
    : ({ x, y: top, anchor: 'middle' } as const);
  return (
    <g>
      {!narrow && (
        <text class="note" x={x} y={top - 20} text-anchor="middle">
          the handle from outside
        </text>
      )}
      <text
        class="hand needs-script no-print"
        x={invitation.x}
        y={invitation.y}
        text-anchor={invitation.anchor}
      >
        turn it
      </text>
    </g>
  );
}
