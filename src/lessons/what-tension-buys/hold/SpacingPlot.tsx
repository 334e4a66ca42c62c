/**
 * How firmly the teeth are held, over guide spacings up to ones that no mill has: one curve that falls towards the axis,
 * with the lesson's own guides, the free strand and the reader's spacing on it.
 * Units: SI in the state; drawing units otherwise.
 */
import { LevelTicks, UprightTicks } from '../../../figures/axis-ticks.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { linearScale, ticks } from '../../../figures/scale.ts';
import { teller } from '../../../figures/teller.ts';
import { unitLabel } from '../../../units/label.ts';
import { whatTensionBuys } from '../model.ts';
import type { State } from '../state.ts';
import type { HoldLayout } from './layout.ts';
import { SPACINGS, teethHold } from './teeth-hold.ts';

const MOST_HOLD = 32e3; // N/m, above the firmest span that can be set
const POINTS = 60;
const BESIDE = 0.7; // of the axis, up to which the point's words are right of it

const say = teller(whatTensionBuys);

interface PartProps {
  readonly state: State;
  readonly layout: HoldLayout;
}

const scalesOf = ({ left, right, top, bottom }: HoldLayout) => ({
  x: linearScale([0, SPACINGS.most], [left, right]),
  y: linearScale([0, MOST_HOLD], [bottom, top]),
});

/** The curve, its points closer together where it is steep. */
function curveOf(stress: number, layout: HoldLayout): string {
  const { x, y } = scalesOf(layout);
  const growth = SPACINGS.most / SPACINGS.least;
  const points = Array.from({ length: POINTS + 1 }, (_, i) => {
    const spacing = SPACINGS.least * growth ** (i / POINTS);
    return `${x(spacing).toFixed(1)} ${y(teethHold(stress, spacing)).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

function Axes({ state, layout }: PartProps) {
  const { left, right, top, bottom, narrow } = layout;
  const { x, y } = scalesOf(layout);
  const { system } = state;
  return (
    <g>
      <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <UprightTicks
        ticks={ticks(0, MOST_HOLD, 'sideStiffness', system, narrow ? 3 : 4)}
        x={left}
        y={y}
      />
      <LevelTicks
        ticks={ticks(0, SPACINGS.most, 'longLength', system, narrow ? 4 : 8)}
        x={x}
        y={bottom}
        drop={20}
      />
      <text class="note" x={4} y={top - 20}>
        push for each {unitLabel('length', system)} that the teeth move,{' '}
        {unitLabel('sideStiffness', system)}
      </text>
    </g>
  );
}

/** The reader's spacing: the point on the curve with its number, and the grip under the axis. */
function Point({ state, layout }: PartProps) {
  const { left, right, bottom, grip } = layout;
  const { x, y } = scalesOf(layout);
  const { far, farHold } = state.values;
  const [pointX, pointY] = [x(far), y(farHold)];
  const isLeft = pointX < left + BESIDE * (right - left);
  return (
    <g>
      <path class="construction" d={`M${left} ${pointY}H${pointX}V${bottom}`} />
      <circle class="steel-fill" cx={pointX} cy={pointY} r={5} />
      <text
        class="steel halo"
        x={pointX + (isLeft ? 12 : 0)}
        y={pointY - 12}
        text-anchor={isLeft ? 'start' : 'end'}
        data-sym="farHold"
      >
        {say(state, 'farHold', 2)}
      </text>
      <Handle
        model={whatTensionBuys}
        state={state}
        x={pointX}
        y={grip}
        input="far"
        label="Move the guides apart"
        drag="x"
        perUnit={SPACINGS.most / (right - left)}
      />
      <text
        class="hand"
        x={pointX + (isLeft ? 30 : -30)}
        y={grip + 5}
        text-anchor={isLeft ? 'start' : 'end'}
        data-sym="far"
      >
        {say(state, 'far')}
      </text>
    </g>
  );
}

/** The plot, its curve and the reader's point on it. */
export function SpacingPlot({ state, layout }: PartProps) {
  return (
    <g>
      <Axes state={state} layout={layout} />
      <path class="steel-line" d={curveOf(state.values.stress, layout)} />
      <Point state={state} layout={layout} />
    </g>
  );
}
