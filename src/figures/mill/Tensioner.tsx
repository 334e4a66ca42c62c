/**
 * The mill's tensioner from its side: handle, bearing and plate, screw, and the block that carries the movable wheel's
 * axle along the slot. The screw's thickness and its thread are drawn larger.
 * Units: drawing units.
 */

import { CutPlate } from '../CutPlate.tsx';
import type { MillLayout } from './layout.ts';
import { SlidingBlock } from './SlidingBlock.tsx';

interface PartProps {
  readonly layout: MillLayout;
}

interface MovedProps extends PartProps {
  /** Where the movable wheel's centre stands now. */
  readonly wheel: number;
}

function Screw({ layout: { axis, beam, handle, narrow }, wheel }: MovedProps) {
  const start = wheel + beam * 1.3;
  const half = beam * 0.22;
  const pitch = narrow ? 4 : 6;
  const turns = Math.floor((handle - start) / pitch);
  const thread = Array.from({ length: turns }, (_, turn) => {
    const x = handle - (turn + 1) * pitch; // the thread stays while the block comes along it
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

/** The bar: half its length is its reach times the cosine of the turn, as anyone sees it from the side. */
function SideHandle({ layout, turns }: PartProps & { readonly turns: number }) {
  const { handle, axis, beam, end } = layout;
  const width = beam * 0.44;
  const half = Math.max(end.reach * Math.abs(Math.cos(2 * Math.PI * turns)), width / 2);
  return (
    <rect
      class="hand-line hand-wash"
      x={handle - width / 2}
      y={axis - half}
      width={width}
      height={2 * half}
      data-sym="torque"
    />
  );
}

interface TensionerProps extends MovedProps {
  readonly id: string;
  /** Turns of the handle since there was no tension. */
  readonly turns: number;
}

/** Block, screw, plate and handle. */
export function Tensioner({ layout, id, wheel, turns }: TensionerProps) {
  const { axis, beam } = layout;
  return (
    <g>
      <Screw layout={layout} wheel={wheel} />
      <SlidingBlock x={wheel} axis={axis} beam={beam} />
      <path class="centre" d={`M${wheel} ${axis - beam}V${axis + beam}`} />
      <Plate layout={layout} id={id} />
      <SideHandle layout={layout} turns={turns} />
    </g>
  );
}
