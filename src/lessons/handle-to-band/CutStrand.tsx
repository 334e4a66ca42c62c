/**
 * A piece of one strand, drawn larger and cut off square: on the cut stand the arrows of the stress, all alike, over
 * the body only; the teeth carry nothing.
 * Units: SI in the values; drawing units.
 */

import { ForceArrow } from '../../figures/ForceArrow.tsx';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { StageMark } from './TurnForces.tsx';
import type { TurnPartProps } from './turn-layout.ts';

const ARROWS = 5;
const TEETH = 6;

/** The edge with the teeth, from left to right under the body. */
function teeth(x: number, y: number, length: number, depth: number): string {
  const pitch = length / TEETH;
  const one = `l${pitch * 0.25} ${depth}l${pitch * 0.75} ${-depth}`;
  return `M${x} ${y}${one.repeat(TEETH)}`;
}

/** The piece: three straight edges, and a wavy one where the drawing of it stops. */
function piece(x: number, top: number, length: number, height: number): string {
  const third = height / 3;
  const wave = `c7 ${-third} -7 ${-third} 0 ${-third}`;
  return `M${x} ${top}h${length}v${height}h${-length}${wave.repeat(3)}`;
}

/** The piece, where on the lower strand it comes from, and its stress. */
export function CutStrand({ state, layout, places }: TurnPartProps) {
  const { strand, perStress, axis, narrow } = layout;
  const { x, y, length, scale } = strand;
  const { stress, area } = state.values;
  const height = OTTERSLEIGH.bodyWidth * scale;
  const depth = (OTTERSLEIGH.widthOverTeeth - OTTERSLEIGH.bodyWidth) * scale;
  const [top, cut] = [y - height / 2, x + length];
  const from = axis + places.radius;
  const source = x + length / 2;
  const reach = stress * perStress;
  return (
    <g data-sym="stress">
      <path
        class="axis"
        d={`M${source - 6} ${from}L${x} ${top - 3}M${source + 6} ${from}L${cut} ${top - 3}`}
      />
      <path class="thin" d={teeth(x, y + height / 2, length, depth)} />
      <path class="outline" d={piece(x, top, length, height)} />
      {Array.from({ length: ARROWS }, (_, place) => (
        <ForceArrow
          key={`arrow${place}`}
          x={cut + 3}
          y={top + (height * (place + 0.5)) / ARROWS}
          length={reach}
          ink="steel"
          head={narrow ? 6 : 8}
        />
      ))}
      <text class="note" x={x + length / 2} y={y + 5} text-anchor="middle">
        {formatQuantity(area, 'area', state.system, { digits: narrow ? 2 : 3 })}
      </text>
      <StageMark state={state} stage={5} name="stress" x={cut + reach + 12} y={y + 5} ink="steel" />
    </g>
  );
}
