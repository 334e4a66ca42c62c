/**
 * The handle seen along the screw: the part that the reader turns, the angle turned since there was no tension, and
 * the push of the hand, an arrow as long as the torque.
 * Units: drawing units; `perUnit` of the handle in turns per radian.
 */

import { ForceArrow } from '../../figures/ForceArrow.tsx';
import { Handle } from '../../figures/Handle.tsx';
import { handleToBand } from './model.ts';
import type { TurnPartProps } from './turn-layout.ts';

const GRIP_HALF = 17;

/** A point at an angle clockwise from the top. */
function around(x: number, y: number, angle: number, radius: number) {
  return { x: x + radius * Math.sin(angle), y: y - radius * Math.cos(angle) };
}

function Quarters({ layout: { end, axis, narrow } }: TurnPartProps) {
  const marks = [0, 1, 2, 3].map((quarter) => {
    const from = around(end.x, axis, (quarter * Math.PI) / 2, end.reach - 3);
    const to = around(end.x, axis, (quarter * Math.PI) / 2, end.reach + 3);
    return `M${from.x} ${from.y}L${to.x} ${to.y}`;
  });
  return (
    <g>
      <circle class="centre" cx={end.x} cy={axis} r={end.reach} />
      <path class="thin" d={marks.join('')} />
      {!narrow && (
        <text class="note" x={end.x} y={axis - end.reach - 30} text-anchor="middle">
          the handle from outside
        </text>
      )}
    </g>
  );
}

/** The angle turned so far, from the top clockwise. */
function Sector({ layout: { end, axis }, places: { angle } }: TurnPartProps) {
  const radius = end.reach * 0.62;
  const to = around(end.x, axis, angle, radius);
  const large = angle > Math.PI ? 1 : 0;
  return (
    <path
      class="hand-wash"
      d={`M${end.x} ${axis}V${axis - radius}A${radius} ${radius} 0 ${large} 1 ${to.x} ${to.y}Z`}
      data-sym="turns"
    />
  );
}

/** Bar, hub and angle, the push of the hand, and the grip that moves it all. */
export function TurnedHandle(props: TurnPartProps) {
  const { state, layout, places } = props;
  const { end, axis, beam, perTorque } = layout;
  const { turns, torque } = state.values;
  const degrees = 360 * turns;
  const grip = around(end.x, axis, places.angle, end.reach);
  return (
    <g>
      <Quarters {...props} />
      <Sector {...props} />
      <g transform={`rotate(${degrees} ${end.x} ${axis})`}>
        <rect
          class="hand-line paper-fill"
          x={end.x - beam * 0.36}
          y={axis - end.reach}
          width={beam * 0.72}
          height={2 * end.reach}
        />
        <circle class="outline paper-fill" cx={end.x} cy={axis} r={beam * 0.9} />
        <g data-sym="torque">
          <ForceArrow
            x={end.x + GRIP_HALF}
            y={axis - end.reach}
            length={torque * perTorque}
            ink="hand"
          />
        </g>
      </g>
      <Handle
        model={handleToBand}
        state={state}
        x={grip.x}
        y={grip.y}
        input="turns"
        label="Turn the handle"
        drag="turn"
        perUnit={1 / (2 * Math.PI)}
        centreX={end.x}
        centreY={axis}
        angle={degrees}
      />
    </g>
  );
}
