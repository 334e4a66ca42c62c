/**
 * What carries: the band's section, drawn larger and hatched below the gullets only.
 * Units: drawing units; sizes of the band in m.
 */
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { Dimension } from '../dimension.tsx';
import { Hatch } from '../Hatch.tsx';

/** The outline of the teeth over one stretch of the band's edge, for the section's view. */
function teeth(left: number, right: number, top: number, bottom: number): string {
  return `M${left} ${top}L${right} ${(top + bottom) / 2}L${left} ${bottom}Z`;
}

interface BandSectionProps {
  /** Left end, middle line, drawing units for a metre. */
  readonly place: { readonly left: number; readonly y: number; readonly scale: number };
  readonly system: UnitSystem;
  readonly id: string;
}

/** The band's section with its two sizes; a tooth stands beyond the gullet and carries nothing. */
export function BandSection({ place, system, id }: BandSectionProps) {
  const { left, y, scale } = place;
  const { bodyWidth, widthOverTeeth, thickness } = OTTERSLEIGH;
  const [body, tip] = [left + bodyWidth * scale, left + widthOverTeeth * scale];
  const half = (thickness * scale) / 2;
  const say = (size: number, kind: 'length' | 'thickness') => formatQuantity(size, kind, system);
  return (
    <g>
      <text class="note" x={left} y={y - half - 10}>
        section of the band
      </text>
      <path class="thin" d={teeth(body, tip, y - half, y + half)} />
      <Hatch id={id} x={left} y={y - half} width={body - left} height={2 * half} />
      <rect class="steel-line" x={left} y={y - half} width={body - left} height={2 * half} />
      <Dimension
        from={left}
        to={body}
        y={y + half + 24}
        edge={y + half + 2}
        text={`${say(bodyWidth, 'length')} × ${say(thickness, 'thickness')}`}
      />
    </g>
  );
}
