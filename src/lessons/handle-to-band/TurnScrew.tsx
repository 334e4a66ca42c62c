/**
 * The tensioner from its side: the block of the movable axle, which is the nut; the screw that draws it outwards; the
 * end plate, the bearing, and the handle's bar as it looks from here while it turns.
 * The thread is drawn by the convention of ISO 6410: a thin line for its root.
 * Units: drawing units.
 */

import { CutPlate } from '../../figures/CutPlate.tsx';
import { SlidingBlock } from '../../figures/mill/SlidingBlock.tsx';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import type { TurnPartProps } from './turn-layout.ts';

function Screw({ layout: { axis, beam, plateWidth }, places: { wheel, plate } }: TurnPartProps) {
  const start = wheel + beam * 1.3;
  const end = plate + plateWidth + beam * 1.1;
  const half = beam * 0.38;
  const { majorDiameter, pitch } = OTTERSLEIGH.threadSize;
  const root = half * (1 - pitch / majorDiameter);
  return (
    <g>
      <rect
        class="outline paper-fill"
        x={start}
        y={axis - half}
        width={end - start}
        height={2 * half}
      />
      <path class="thin" d={`M${start} ${axis - root}H${plate}M${start} ${axis + root}H${plate}`} />
    </g>
  );
}

/** The end plate in section, cut open where the screw goes through, and the balls of the bearing on it. */
function Plate({ state, layout, places: { plate } }: TurnPartProps) {
  const { axis, beam, plateWidth } = layout;
  return (
    <g>
      <CutPlate
        id={`${state.idPrefix}-plate`}
        x={plate}
        axis={axis}
        width={plateWidth}
        hole={beam * 0.6}
        height={beam * 2.2}
      />
      {[-1, 1].map((side) => (
        <circle
          key={`ball${side}`}
          class="outline paper-fill"
          cx={plate + plateWidth + beam * 0.4}
          cy={axis + side * beam * 0.85}
          r={beam * 0.32}
        />
      ))}
    </g>
  );
}

/** Head and bar: the bar's half-length is its reach times the cosine of the turn, as anyone sees it from the side. */
function SideHandle({ layout, places: { plate, angle } }: TurnPartProps) {
  const { axis, beam, plateWidth, end } = layout;
  const head = plate + plateWidth + beam * 0.8;
  const bar = Math.max(end.reach * Math.abs(Math.cos(angle)), beam * 0.36);
  const x = head + beam * 0.5;
  return (
    <g data-sym="torque">
      <rect
        class="outline paper-fill"
        x={head}
        y={axis - beam * 1.1}
        width={beam * 0.5}
        height={beam * 2.2}
      />
      <rect class="hand-line hand-wash" x={x} y={axis - bar} width={beam * 0.72} height={2 * bar} />
    </g>
  );
}

/** Block, screw, plate with its bearing, and the handle. */
export function TurnScrew(props: TurnPartProps) {
  const {
    layout: { axis, beam },
    places,
  } = props;
  return (
    <g>
      <Screw {...props} />
      <SlidingBlock x={places.wheel} axis={axis} beam={beam} />
      <Plate {...props} />
      <SideHandle {...props} />
    </g>
  );
}
