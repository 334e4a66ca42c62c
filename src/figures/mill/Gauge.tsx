/**
 * Where the steel is measured: the dial on its bar over the upper strand, whose hand turns as far as the real one would.
 * Units: drawing units; what is read in m.
 */
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { Dimension } from '../dimension.tsx';
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
