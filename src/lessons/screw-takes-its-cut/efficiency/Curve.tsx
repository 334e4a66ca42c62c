/**
 * Efficiency against lead angle, for the thread alone and with its collar; where the thread holds by itself; the
 * reader's screw on the curve, with a handle that changes its lead.
 * Units: SI in the state (angles in radians, efficiency as a share); drawing units otherwise.
 */
import { efficiency } from '../../../core/screw.ts';
import { Axes } from './Axes.tsx';
import {
  efficiencyScales,
  FLATTEST,
  holdingAngle,
  type PlotProps,
  STEEPEST,
  screwAt,
} from './frame.ts';
import { OwnScrewPoint } from './OwnScrewPoint.tsx';

const POINTS = 90;

function curve({ state: { values }, x, y }: PlotProps, collarFriction: number): string {
  const points = Array.from({ length: POINTS + 1 }, (_, place) => {
    const angle = FLATTEST + ((STEEPEST - FLATTEST) * place) / POINTS;
    const arrives = efficiency({ ...screwAt(values, angle), collarFriction });
    return `${x(angle).toFixed(1)} ${y(arrives).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

/** Its words are above the plot, where no curve runs and no grip reaches. */
function HoldingLimit({ state, layout, x }: PlotProps) {
  const { left, top, bottom } = layout.plot;
  const limit = x(holdingAngle(state));
  return (
    <g>
      <rect
        class="shade-fill"
        x={left}
        y={top}
        width={Math.max(0, limit - left)}
        height={bottom - top}
      />
      <path class="limit" d={`M${limit} ${top - 30}V${bottom}`} />
      <text class="halo" x={limit + 8} y={top - 20}>
        {layout.narrow ? 'steeper: lets go' : 'steeper than this, the thread alone lets go'}
      </text>
    </g>
  );
}

/** What the screw passes on at the steep end of the plot, where the names of the curves are. */
function steepEnd({ state: { values }, layout, y }: PlotProps, collarFriction: number) {
  const from = layout.narrow ? 0.6 : 0.68;
  return [from, STEEPEST].map((angle) =>
    y(efficiency({ ...screwAt(values, angle), collarFriction })),
  );
}

function Curves(props: PlotProps) {
  const { state, layout } = props;
  const { collarFriction } = state.values;
  const end = layout.plot.right;
  return (
    <g>
      <path class="thin" d={curve(props, 0)} />
      <path class="outline" d={curve(props, collarFriction)} />
      <text class="halo note" x={end} y={Math.min(...steepEnd(props, 0)) - 9} text-anchor="end">
        thread alone
      </text>
      <text
        class="halo"
        x={end}
        y={Math.max(...steepEnd(props, collarFriction)) + 21}
        text-anchor="end"
      >
        with collar
      </text>
    </g>
  );
}

/** The plot. */
export function Curve({ state, layout }: Pick<PlotProps, 'state' | 'layout'>) {
  const all = { state, layout, ...efficiencyScales(layout) };
  return (
    <g>
      <HoldingLimit {...all} />
      <Axes {...all} />
      <Curves {...all} />
      <OwnScrewPoint {...all} />
    </g>
  );
}
