/**
 * Parts of a screw tensioner drawn larger: the frame's arm in section, the screw, bearing and nut.
 * Units: sizes in m; places in drawing units.
 */
import { CutPlate } from '../../../figures/CutPlate.tsx';
import type { TensionerSizes } from './tensioner-sizes.ts';

/** Places along the screw, in drawing units. */
export interface Along {
  readonly face: number;
  readonly washer: number;
  readonly nut: number;
  readonly out: number;
  readonly end: number;
  readonly y: number;
  readonly scale: number;
}

interface PartProps {
  readonly at: Along;
  readonly sizes: TensionerSizes;
}

/** The frame's arm, cut through its hole. */
export function ArmInSection({ at, sizes, id }: PartProps & { readonly id: string }) {
  const width = sizes.plate * at.scale;
  const hole = (sizes.screw / 2) * at.scale * 1.15;
  const height = hole * 1.2;
  const x = at.face - width;
  return <CutPlate {...{ id, x, width, hole, height }} axis={at.y} />;
}

/** The screw with as much thread as stands out of its nut. */
export function Screw({ at, sizes, lead }: PartProps & { readonly lead: number }) {
  const half = (sizes.screw / 2) * at.scale;
  const start = at.face - sizes.plate * at.scale - 14;
  const pitch = Math.max(5, lead * at.scale);
  const count = Math.max(0, Math.floor((at.end - at.out) / pitch));
  const thread = Array.from({ length: count }, (_, turn) => {
    const x = at.end - (turn + 1) * pitch;
    return `M${x} ${at.y + half}L${x + pitch / 2} ${at.y - half}`;
  });
  return (
    <g>
      <rect
        class="outline paper-fill"
        x={start}
        y={at.y - half}
        width={at.end - start}
        height={2 * half}
      />
      <path class="thin" d={thread.join('')} />
      <path class="centre" d={`M${start - 8} ${at.y}H${at.end + 12}`} />
    </g>
  );
}

/** Bearing or washer, and the nut in the hand's ink. */
export function Nut({ at, sizes }: PartProps) {
  const half = (sizes.nutAcross / 2) * at.scale;
  const width = at.out - at.nut;
  return (
    <g data-sym="turns">
      <rect
        class="outline shade-fill"
        x={at.washer}
        y={at.y - half * 0.85}
        width={at.nut - at.washer}
        height={half * 1.7}
      />
      <rect
        class="hand-line paper-fill"
        x={at.nut}
        y={at.y - half}
        width={width}
        height={2 * half}
      />
      <path
        class="hand-line"
        d={`M${at.nut} ${at.y - half / 2}h${width}M${at.nut} ${at.y + half / 2}h${width}`}
      />
    </g>
  );
}
