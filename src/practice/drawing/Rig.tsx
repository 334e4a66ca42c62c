/**
 * The practice mill from its side: the band over its wheels, bowed by its coil set until it is pulled straight, the bar
 * between its clamps with the dial, and the handle with the wrench on it.
 * Units: drawing units; m and turns of the handle in the view.
 */
import { formatQuantity } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import type { View } from '../state/view.ts';
import type { BenchLayout } from './layout.ts';

interface Props {
  readonly view: View;
  readonly layout: BenchLayout;
  readonly system: UnitSystem;
}

const BOW = { perMetre: 9e4, most: 15 }; // of the drawing for a metre of coil set, and the highest
const CLAMPS = [0.27, 0.73] as const; // of the upper strand

/** How high the band is bowed in the middle; coil set of either sign bows it up. */
const bowOf = ({ coil }: View) => Math.min(BOW.most, BOW.perMetre * Math.abs(coil));

/** The band's height at a share of the upper strand. */
const strandAt = ({ axis, radius }: BenchLayout, bow: number, share: number) =>
  axis - radius - 4 * bow * share * (1 - share);

function Wheels({ layout }: Pick<Props, 'layout'>) {
  const { left, right, axis, radius, isWhole } = layout;
  const upper = (x: number, r: number) =>
    `M${x - r * 0.8} ${axis - r * 0.6}A${r} ${r} 0 0 1 ${x + r * 0.8} ${axis - r * 0.6}`;
  if (!isWhole)
    return <path class="outline" d={[left, right].map((x) => upper(x, radius - 3)).join('')} />;
  return (
    <g>
      {[left, right].map((x) => (
        <g key={x} transform={`translate(${x} ${axis})`}>
          <circle class="outline" r={radius - 3} />
          <circle class="thin" r={radius * 0.84} />
          <path class="centre" d={`M0 ${-radius - 8}V${radius + 8}`} />
        </g>
      ))}
      <path class="centre" d={`M${left - radius - 8} ${axis}H${right + radius + 8}`} />
    </g>
  );
}

function Band({ view, layout }: Props) {
  const { left, right, axis, radius, isWhole } = layout;
  const top = axis - radius;
  const span = `M${left} ${top}Q${(left + right) / 2} ${top - 2 * bowOf(view)} ${right} ${top}`;
  const rest = isWhole
    ? `A${radius} ${radius} 0 0 1 ${right} ${axis + radius}H${left}A${radius} ${radius} 0 0 1 ${left} ${top}Z`
    : `A${radius} ${radius} 0 0 1 ${right + radius * 0.8} ${axis - radius * 0.6}M${left} ${top}A${radius} ${radius} 0 0 0 ${left - radius * 0.8} ${axis - radius * 0.6}`;
  return <path class="steel-line" d={span + rest} />;
}

/** Clamps, bar and the dial at its end; nothing before they are set. */
function Bar({ view, layout }: Props) {
  const { left, right, narrow } = layout;
  if (!view.dial) return null;
  const [width, height] = narrow ? [6, 12] : [9, 22];
  const size = narrow ? 10 : 18;
  const ends = CLAMPS.map((share) => ({
    x: left + share * (right - left),
    y: strandAt(layout, bowOf(view), share),
  }));
  const [from, to] = ends as [(typeof ends)[0], (typeof ends)[0]];
  return (
    <g>
      <path
        class="outline"
        d={`M${from.x} ${from.y - height * 0.6}L${to.x - size} ${to.y - height * 0.6}`}
      />
      {ends.map(({ x, y }) => (
        <rect
          key={x}
          class="outline paper-fill"
          x={x - width / 2}
          y={y - height * 0.75}
          width={width}
          height={height}
        />
      ))}
      <circle
        class="outline paper-fill"
        cx={to.x - size - width}
        cy={to.y - height * 0.6}
        r={size}
      />
    </g>
  );
}

/** The screw's end with the wrench on it, turned as far as the handle is. */
function Wrench({ view, layout, system }: Props) {
  const { handle, right, axis, radius, isWhole, words, narrow } = layout;
  const { x, y, reach } = handle;
  const turns = view.dial?.now.turns ?? 0;
  return (
    <g>
      {isWhole && (
        <path
          class="outline"
          d={`M${right + 8} ${axis}H${x - reach - 14}M${x - reach - 14} ${axis - 16}V${axis + 16}`}
        />
      )}
      {isWhole && <circle class="outline paper-fill" cx={right} cy={axis} r={radius * 0.14} />}
      <circle class="centre" cx={x} cy={y} r={reach} />
      <g transform={`translate(${x} ${y}) rotate(${360 * turns})`}>
        <path class="hand-line hand-wash" d={`M-4 6V${-reach}H4V6Z`} />
        <circle class="outline paper-fill" r={narrow ? 8 : 12} />
      </g>
      <text x={x} y={words} text-anchor="middle">
        {formatQuantity(turns, 'turns', system)}
      </text>
      {!narrow && (
        <text class="note" x={x} y={words + 18} text-anchor="middle">
          of the handle
        </text>
      )}
    </g>
  );
}

/** Mill, rig and handle. */
export function Rig(props: Props) {
  return (
    <g>
      <Wheels layout={props.layout} />
      <Band {...props} />
      <Bar {...props} />
      <Wrench {...props} />
    </g>
  );
}
