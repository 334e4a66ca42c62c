/**
 * The mill from the side, to scale: both wheels, the band with its tight part thicker, the log, the way the band runs, and the
 * place on the band that the trace follows.
 * Units: SI in the state; drawing units otherwise.
 */
import { ArrowHead } from '../../../figures/dimension.tsx';
import { OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';
import type { State } from '../state.ts';
import { type DrawnLoop, dotPlace } from './dot-place.ts';
import type { LapLayout } from './layout.ts';

/** The loop on the sheet. */
export function drawnLoop({ wheelDiameter }: State['values'], { loop }: LapLayout): DrawnLoop {
  return {
    x: loop.x,
    y: loop.y,
    half: (OTTERSLEIGH.centreDistance / 2) * loop.perLength,
    radius: (wheelDiameter / 2) * loop.perLength,
  };
}

function Wheels({ loop: { x, y, half, radius } }: { readonly loop: DrawnLoop }) {
  return (
    <g>
      {[
        { name: 'drive', centre: x - half },
        { name: 'idle', centre: x + half },
      ].map(({ name, centre }) => (
        <g key={name} transform={`translate(${centre} ${y})`}>
          <circle class="thin" r={radius - 3} />
          <text class="note" y={5} text-anchor="middle">
            {name}
          </text>
        </g>
      ))}
    </g>
  );
}

/** The log in the lower strand, with the cut in it. */
function Log({
  loop: { x, y, radius },
  size,
}: {
  readonly loop: DrawnLoop;
  readonly size: number;
}) {
  return (
    <g>
      <circle class="construction" cx={x} cy={y + radius} r={size} />
      <circle class="grid" cx={x} cy={y + radius} r={size * 0.55} />
    </g>
  );
}

/** The whole loop, and over it the part between log and driving wheel that the cut pulls tighter. */
function Band({ loop: { x, y, half, radius } }: { readonly loop: DrawnLoop }) {
  return (
    <g>
      <path
        class="outline"
        d={`M${x - half} ${y - radius}H${x + half}a${radius} ${radius} 0 0 1 0 ${2 * radius}H${x - half}a${radius} ${radius} 0 0 1 0 ${-2 * radius}`}
      />
      <path class="limit" d={`M${x} ${y + radius}H${x - half}`} />
      <ArrowHead x={x + 8} y={y - radius} angle={0} size={13} />
    </g>
  );
}

/** Mill and dot. */
export function MillLoop({ state, layout }: { readonly state: State; readonly layout: LapLayout }) {
  const { place, strandShare } = state.values;
  const loop = drawnLoop(state.values, layout);
  const dot = dotPlace(place, strandShare, loop);
  return (
    <g>
      <Log loop={loop} size={0.1 * layout.loop.perLength} />
      <Wheels loop={loop} />
      <Band loop={loop} />
      <g transform={`translate(${dot.x} ${dot.y})`}>
        <circle class="steel-fill" r={layout.loop.dot} />
      </g>
    </g>
  );
}
