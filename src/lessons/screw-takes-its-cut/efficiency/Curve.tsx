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
      <path class="limit" d={`M${limit} ${top}V${bottom}`} />
      <text class="halo" x={limit + 8} y={top + 14}>
        {layout.narrow ? 'steeper: lets go' : 'steeper than this, the thread alone lets go'}
      </text>
    </g>
  );
}

function Curves(props: PlotProps) {
  const { state, layout, x, y } = props;
  const { values } = state;
  const alone = curve(props, 0);
  const whole = curve(props, values.collarFriction);
  const at = layout.narrow ? 0.62 : 0.66;
  const labelAt = (collarFriction: number) =>
    y(efficiency({ ...screwAt(values, at), collarFriction }));
  const ends = [labelAt(0), labelAt(values.collarFriction)] as const;
  return (
    <g>
      <path class="thin" d={alone} />
      <path class="outline" d={whole} />
      <text class="halo note" x={x(at)} y={ends[0] - 8} text-anchor="middle">
        thread alone
      </text>
      <text class="halo" x={x(at)} y={ends[1] + 22} text-anchor="middle">
        thread and collar
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
