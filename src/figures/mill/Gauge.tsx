/**
 * Where the steel is measured and what carries: the dial on its bar over the upper strand, whose hand turns as far as
 * the real one would, and the band's section, drawn larger and hatched below the gullets only.
 * Units: drawing units; sizes of the band in m.
 */
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { Dimension } from '../dimension.tsx';
import { Hatch } from '../Hatch.tsx';
import type { MillLayout } from './layout.ts';

const DIAL_TURN = 1e-3; // m of stretch for one turn of the hand
const TENTH = Math.PI / 5;

interface GaugeProps {
  readonly layout: MillLayout;
  readonly system: UnitSystem;
  /** What the dial reads, in m. */
  readonly reading: number;
}

interface DialProps {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** What it reads, in m. */
  readonly reading: number;
}

/** The dial over the end of its bar; one turn of its hand is a millimetre, with a mark at each tenth. */
function Dial({ x, y, radius, reading }: DialProps) {
  const turn = (2 * Math.PI * reading) / DIAL_TURN;
  const marks = Array.from({ length: 10 }, (_, tenth) => {
    const [sine, cosine] = [Math.sin(tenth * TENTH), -Math.cos(tenth * TENTH)];
    const inner = radius * 0.82;
    return `M${x + inner * sine} ${y + inner * cosine}L${x + radius * sine} ${y + radius * cosine}`;
  });
  const hand = radius * 0.75;
  return (
    <g data-sym="stretch">
      <circle class="outline paper-fill" cx={x} cy={y} r={radius} />
      <path class="thin" d={marks.join('')} />
      <path
        class="steel-line"
        d={`M${x} ${y}l${hand * Math.sin(turn)} ${-hand * Math.cos(turn)}`}
      />
    </g>
  );
}

/** Two clamps, the bar between them, the dial at its end; the gauge length runs between the clamps' inner edges. */
export function Gauge({ layout, system, reading }: GaugeProps) {
  const { middle, axis, radius, scale, narrow, dial } = layout;
  const half = (OTTERSLEIGH.gaugeLength / 2) * scale;
  const strand = axis - radius;
  const clamp = narrow ? { width: 5, height: 14 } : { width: 10, height: 26 };
  const bar = strand - clamp.height * 0.62;
  const text = formatQuantity(OTTERSLEIGH.gaugeLength, 'length', system);
  return (
    <g>
      <path class="outline" d={`M${middle - half - clamp.width / 2} ${bar}H${middle + half}`} />
      {[middle - half - clamp.width, middle + half].map((x) => (
        <rect
          key={x}
          class="outline paper-fill"
          x={x}
          y={strand - clamp.height * 0.75}
          width={clamp.width}
          height={clamp.height}
        />
      ))}
      <Dial x={middle + half - dial} y={bar - dial} radius={dial} reading={reading} />
      <Dimension
        from={middle - half}
        to={middle + half}
        y={strand + (narrow ? 21 : 32)}
        edge={strand + 4}
        text={narrow ? text : `gauge length ${text}`}
      />
    </g>
  );
}

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
