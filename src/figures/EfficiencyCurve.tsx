/**
 * Efficiency against lead angle, for the thread alone and with its collar; where the thread holds by itself; the
 * reader's screw on the curve, with a handle that changes its lead.
 * Units: SI in the state (angles in radians, efficiency as a share); drawing units otherwise.
 */
import { effectiveFriction, efficiency } from '../core/screw.ts';
import { type ScrewInputs, screwOf } from '../models/screw/friction-doubt.ts';
import { screwTakesItsCut } from '../models/screw-takes-its-cut.ts';
import { formatQuantity } from '../units/format-quantity.ts';
import type { EfficiencyLayout } from './efficiency-layout.ts';
import type { FigureState } from './figure.ts';
import { Handle } from './Handle.tsx';
import { linearScale, ticks } from './scale.ts';

const STEEPEST = Math.PI / 4;
const FLATTEST = 0.002;
const POINTS = 90;
const LABEL_WIDTH = 100;

interface PartProps {
  readonly state: FigureState;
  readonly layout: EfficiencyLayout;
}

function scales({ plot }: EfficiencyLayout) {
  return {
    x: linearScale([0, STEEPEST], [plot.left, plot.right]),
    y: linearScale([0, 1], [plot.bottom, plot.top]),
  };
}

type Scales = ReturnType<typeof scales>;

/** The reader's screw with another lead angle. */
function screwAt(values: FigureState['values'], angle: number) {
  const inputs = values as unknown as ScrewInputs;
  return screwOf({ ...inputs, lead: Math.PI * inputs.meanDiameter * Math.tan(angle) });
}

function curve({ state: { values }, x, y }: PartProps & Scales, collarFriction: number): string {
  const points = Array.from({ length: POINTS + 1 }, (_, place) => {
    const angle = FLATTEST + ((STEEPEST - FLATTEST) * place) / POINTS;
    const arrives = efficiency({ ...screwAt(values, angle), collarFriction });
    return `${x(angle).toFixed(1)} ${y(arrives).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

function Axes({ state, layout, x, y }: PartProps & Scales) {
  const { left, right, top, bottom } = layout.plot;
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      {ticks(0, 1, 'percent', state.system, 5).map(({ value, text }) => (
        <g key={`y${text}`}>
          <path class="axis" d={`M${left - 5} ${y(value)}H${left}`} />
          <text class="note" x={left - 8} y={y(value) + 5} text-anchor="end">
            {text}
          </text>
        </g>
      ))}
      <text class="note" x={4} y={top - 12}>
        {layout.narrow ? 'arrives, %' : 'share of the effort that arrives, %'}
      </text>
      {ticks(0, STEEPEST, 'angle', state.system, layout.narrow ? 5 : 9).map(({ value, text }) => (
        <g key={`x${text}`}>
          <path class="axis" d={`M${x(value)} ${bottom}V${bottom + 5}`} />
          <text class="note" x={x(value)} y={bottom + 20} text-anchor="middle">
            {text}
          </text>
        </g>
      ))}
      <text class="note" x={right} y={bottom + 40} text-anchor="end">
        lead angle: how steeply the thread climbs, °
      </text>
    </g>
  );
}

/** The lead angle at which the load just turns the thread; the flank's share is taken where the answer lies. */
function holdingAngle({ values }: FigureState): number {
  const { frictionAngle = 0 } = values;
  return Math.atan(effectiveFriction(screwAt(values, Math.max(FLATTEST, frictionAngle))));
}

function HoldingLimit({ state, layout, x }: PartProps & Scales) {
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
        {layout.narrow ? 'steeper: slides back' : 'steeper than this, the load turns it back'}
      </text>
    </g>
  );
}

function Curves(props: PartProps & Scales) {
  const { state, layout, x, y } = props;
  const { values } = state;
  const alone = curve(props, 0);
  const whole = curve(props, values['collarFriction'] ?? 0);
  const at = layout.narrow ? 0.62 : 0.66;
  const labelAt = (collarFriction: number) =>
    y(efficiency({ ...screwAt(values, at), collarFriction }));
  const ends = [labelAt(0), labelAt(values['collarFriction'] ?? 0)] as const;
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

function OwnScrew({ state, layout, x, y }: PartProps & Scales) {
  const { values, system } = state;
  const { lead = 0, leadAngle = 0, meanDiameter = 0, efficiency: arrives = 0 } = values;
  const spec = screwTakesItsCut.inputs['lead'];
  const perAngle = (Math.PI * meanDiameter) / Math.cos(leadAngle) ** 2;
  const [at, height] = [x(leadAngle), y(arrives)];
  const limit = x(holdingAngle(state));
  const beside = at + 24;
  const labelAt = beside < limit && beside + LABEL_WIDTH > limit ? limit + 8 : beside;
  return (
    <g>
      <path class="construction" d={`M${layout.plot.left} ${height}H${at}V${layout.plot.bottom}`} />
      {spec && (
        <Handle
          x={at}
          y={height}
          input="lead"
          label="Change the lead of the screw"
          value={lead}
          min={spec.min}
          max={spec.max}
          text={formatQuantity(lead, 'length', system)}
          drag="x"
          perUnit={perAngle / (x(1) - x(0))}
        />
      )}
      <text class="halo" x={labelAt} y={height + 5} data-sym="efficiency">
        {formatQuantity(arrives, 'percent', system, { digits: 2 })}
        {layout.narrow ? '' : ` at ${formatQuantity(leadAngle, 'angle', system, { digits: 2 })}`}
      </text>
    </g>
  );
}

/** The plot. */
export function EfficiencyCurve(props: PartProps) {
  const { x, y } = scales(props.layout);
  const all = { ...props, x, y };
  return (
    <g>
      <HoldingLimit {...all} />
      <Axes {...all} />
      <Curves {...all} />
      <OwnScrew {...all} />
    </g>
  );
}
