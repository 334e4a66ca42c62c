/**
 * Three stresses with their 95 % intervals on one axis; what lies beyond it is an arrow with its number.
 * Units: SI in the state; drawing units otherwise.
 */
import { LevelTicks } from '../../../figures/axis-ticks.tsx';
import { ArrowHead } from '../../../figures/dimension.tsx';
import { linearScale, ticks } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { unitLabel } from '../../../units/label.ts';
import type { State } from '../state.ts';
import type { RoutesLayout } from './layout.ts';

const ENDS = [0, 200e6] as const; // Pa

interface PartProps {
  readonly state: State;
  readonly layout: RoutesLayout;
}

/** The routes by their names, top to bottom. */
export function routesOf({ values }: State) {
  const { dialStress, dialExpanded, pluckStress, pluckExpanded, weightStress, weightExpanded } =
    values;
  return [
    { name: 'dial', stress: dialStress, expanded: dialExpanded, sym: 'dialStress' },
    { name: 'note', stress: pluckStress, expanded: pluckExpanded, sym: 'pluckStress' },
    { name: 'weight', stress: weightStress, expanded: weightExpanded, sym: 'weightStress' },
  ] as const;
}

const scaleOf = ({ left, right }: RoutesLayout) => linearScale(ENDS, [left, right]);

interface IntervalProps extends PartProps {
  readonly route: ReturnType<typeof routesOf>[number];
  readonly y: number;
}

/** A bar with ends, its middle filled; or an arrow to where it would be. */
function Interval({ route, y, layout }: IntervalProps) {
  const x = scaleOf(layout);
  const [low, high] = [x(route.stress - route.expanded), x(route.stress + route.expanded)];
  const middle = x(route.stress);
  if (low > layout.right)
    return (
      <g>
        <path class="steel-line" d={`M${layout.right - 60} ${y}H${layout.right - 6}`} />
        <ArrowHead x={layout.right + 4} y={y} angle={0} ink="steel" size={11} />
      </g>
    );
  return (
    <g>
      <path class="steel-line" d={`M${low} ${y}H${high}M${low} ${y - 8}v16M${high} ${y - 8}v16`} />
      <circle class="steel-fill" cx={middle} cy={y} r={5} />
    </g>
  );
}

function Row({ route, y, state, layout }: IntervalProps) {
  const { names, right } = layout;
  const { stress, expanded, name, sym } = route;
  const said = formatQuantity(stress, 'stress', state.system, { uncertainty: expanded });
  const isOff = stress - expanded > ENDS[1];
  return (
    <g data-sym={sym}>
      <path class="grid" d={`M${layout.left} ${y}H${right}`} />
      <Interval route={route} y={y} state={state} layout={layout} />
      <text x={names.x} y={y + 5 - names.above}>
        {name}
      </text>
      <text class="steel" x={right} y={y - 14 + (names.above > 0 ? -1 : 0)} text-anchor="end">
        {said}
        {isOff ? ', off the scale' : ''}
      </text>
    </g>
  );
}

/** The axis and the three rows. */
export function ThreeRoutes({ state, layout }: PartProps) {
  const { left, right, axis, rows } = layout;
  const x = scaleOf(layout);
  return (
    <g>
      <path class="axis" d={`M${left} ${axis}H${right}`} />
      <LevelTicks
        ticks={ticks(ENDS[0], ENDS[1], 'stress', state.system, state.narrow ? 3 : 5)}
        x={x}
        y={axis}
        drop={20}
      />
      <text class="note" x={right} y={axis + 38} text-anchor="end">
        stress, {unitLabel('stress', state.system)}
      </text>
      {routesOf(state).map((route, place) => (
        <Row key={route.name} route={route} y={rows[place] ?? 0} state={state} layout={layout} />
      ))}
    </g>
  );
}
