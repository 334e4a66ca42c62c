/**
 * The tensioner of the mill on the title page: handle, bearing and plate, screw, and the block that carries the
 * movable wheel's axle along the slot. The screw's thickness and its thread are drawn larger.
 * Units: drawing units.
 */

import { CutPlate } from '../CutPlate.tsx';
import { ArrowHead } from '../dimension.tsx';
import type { MillLayout } from './layout.ts';
import { SlidingBlock } from './SlidingBlock.tsx';

interface PartProps {
  readonly layout: MillLayout;
}

function Screw({ layout: { right, axis, beam, handle, narrow } }: PartProps) {
  const start = right + beam * 1.3;
  const half = beam * 0.22;
  const pitch = narrow ? 4 : 6;
  const turns = Math.floor((handle - start) / pitch);
  const thread = Array.from({ length: turns }, (_, turn) => {
    const x = start + turn * pitch;
    return `M${x} ${axis + half}L${x + pitch * 0.6} ${axis - half}`;
  });
  return (
    <g>
      <rect
        class="outline paper-fill"
        x={start}
        y={axis - half}
        width={handle - start}
        height={2 * half}
      />
      <path class="thin" d={thread.join('')} />
    </g>
  );
}

/** The end plate in section, and the bearing through which the screw pushes on it. */
function Plate({ layout: { plate, axis, beam }, id }: PartProps & { readonly id: string }) {
  return (
    <g>
      <CutPlate
        id={id}
        x={plate}
        axis={axis}
        width={beam * 0.7}
        hole={beam * 0.3}
        height={beam * 1.35}
      />
      {[-1, 1].map((side) => (
        <circle
          key={side}
          class="outline paper-fill"
          cx={plate + beam * 0.95}
          cy={axis + side * beam * 0.5}
          r={beam * 0.22}
        />
      ))}
    </g>
  );
}

/** The handle, in the hand's ink, and the way it is turned. */
function TurnedHandle({ layout: { handle, axis, beam } }: PartProps) {
  const reach = beam * 2.1;
  const sweep = beam * 0.75;
  const start = { x: handle + sweep * 0.9, y: axis + reach * 0.55 };
  return (
    <g data-sym="torque">
      <rect
        class="hand-line hand-wash"
        x={handle - beam * 0.22}
        y={axis - reach}
        width={beam * 0.44}
        height={2 * reach}
      />
      <path
        class="hand-line"
        d={`M${start.x} ${start.y}A${sweep} ${reach * 0.62} 0 0 0 ${start.x} ${axis - reach * 0.55}`}
      />
      <ArrowHead x={start.x - 3} y={axis - reach * 0.62} angle={-125} ink="hand" />
    </g>
  );
}

/** Block, screw, plate and handle. */
export function Tensioner({ layout, id }: PartProps & { readonly id: string }) {
  const { right, axis, beam } = layout;
  return (
    <g>
      <Screw layout={layout} />
      <SlidingBlock x={right} axis={axis} beam={beam} />
      <path class="centre" d={`M${right} ${axis - beam}V${axis + beam}`} />
      <Plate layout={layout} id={id} />
      <TurnedHandle layout={layout} />
    </g>
  );
}
