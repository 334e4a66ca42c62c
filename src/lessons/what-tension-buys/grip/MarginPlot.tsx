/**
 * The slip margin over the cutting power at the reader's tension, at half and at a quarter of it: each line ends where the
 * band slips, with its power under it.
 * Units: SI in the state; drawing units otherwise.
 */
import { LevelTicks, UprightTicks } from '../../../figures/axis-ticks.tsx';
import { ArrowHead } from '../../../figures/dimension.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { Hatch } from '../../../figures/Hatch.tsx';
import { ticks } from '../../../figures/scale.ts';
import { teller } from '../../../figures/teller.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { unitLabel } from '../../../units/label.ts';
import { whatTensionBuys } from '../model.ts';
import type { State } from '../state.ts';
import { marginAt } from './drive-wheel.ts';
import type { GripLayout } from './layout.ts';
import { gripScales, MARGINS, MOST_POWER } from './scales.ts';

const POINTS = 24;
const BESIDE_GRIP = 19; // from the axis to its numbers: the grip can stand at no power
const say = teller(whatTensionBuys);

interface PartProps {
  readonly state: State;
  readonly layout: GripLayout;
}

/** The three tensions with the powers at which they slip, from the reader's own down. */
function linesOf({ stress, halfStress, quarterStress, ...values }: State['values']) {
  return [
    { stress, slips: values.slipPower },
    { stress: halfStress, slips: values.halfSlipPower },
    { stress: quarterStress, slips: values.quarterSlipPower },
  ];
}

/** A tension's line, to where it slips or leaves the plot. */
function lineOf(state: State, layout: GripLayout, stress: number, slips: number): string {
  const { x, y } = gripScales(layout);
  const end = Math.min(slips, MOST_POWER);
  const points = Array.from({ length: POINTS + 1 }, (_, place) => {
    const power = (end * place) / POINTS;
    return `${x(power).toFixed(1)} ${y(marginAt(stress, power, state.values.friction)).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

function Axes({ state, layout }: PartProps) {
  const { left, right, top, bottom, strip, numbers } = layout;
  const { x, y } = gripScales(layout);
  const { system, narrow } = state;
  return (
    <g>
      <Hatch
        id={`${state.idPrefix}-slip`}
        x={left}
        y={bottom}
        width={right - left}
        height={strip}
      />
      <path class="axis" d={`M${left} ${top}V${bottom}`} />
      <UprightTicks
        ticks={ticks(...MARGINS, 'ratio', system, narrow ? 3 : 6)}
        x={left}
        y={y}
        gap={BESIDE_GRIP}
      />
      <LevelTicks
        ticks={ticks(0, MOST_POWER, 'power', system, narrow ? 4 : 7)}
        x={x}
        y={bottom + strip}
        drop={numbers - bottom - strip}
      />
      <path class="limit" d={`M${left} ${bottom}H${right}`} />
      <text class="note" x={layout.names} y={16}>
        slip margin over cutting power, {unitLabel('power', system)}
      </text>
    </g>
  );
}

/** A tension and the power at which it slips, under the end of its line; an arrow where that is off the plot. */
function Slips({ state, layout, place }: PartProps & { readonly place: number }) {
  const { stress, slips } = linesOf(state.values)[place] ?? { stress: 0, slips: 0 };
  const { bottom, right, left, line, names, numbers } = layout;
  const y = layout.slips + place * line;
  const isOff = slips > MOST_POWER;
  const at = isOff ? right : gripScales(layout).x(slips);
  const power = formatQuantity(slips, 'power', state.system, { digits: 2 });
  return (
    <g>
      <text class={place === 0 ? 'hand' : ''} x={names} y={y}>
        {formatQuantity(stress, 'stress', state.system)}
      </text>
      <path class="grid" d={`M${left} ${y - 5}H${at}`} />
      {isOff ? (
        <ArrowHead x={at + 4} y={y - 5} angle={0} />
      ) : (
        <g>
          <path class="construction" d={`M${at} ${numbers + 5}V${y - 5}`} />
          <circle class="steel-fill" cx={at} cy={bottom} r={4} />
        </g>
      )}
      <text class="steel" x={at + 8} y={y}>
        {layout.narrow ? '' : 'slips at '}
        {power}
      </text>
    </g>
  );
}

/** Where the mill cuts: its power as a line, its margin over it. */
function Cutting({ state, layout }: PartProps) {
  const { left, right, top, bottom, said } = layout;
  const { power, margin } = state.values;
  const { x, y } = gripScales(layout);
  const at = x(power);
  const isRight = at < (left + right) / 2;
  return (
    <g>
      <path class="hand-line" d={`M${at} ${bottom}V${top}`} />
      {margin >= 1 && <circle class="steel-fill" cx={at} cy={y(margin)} r={6} />}
      <text
        class="steel"
        x={at + (isRight ? -4 : 4)}
        y={said}
        text-anchor={isRight ? 'start' : 'end'}
        data-sym="margin"
      >
        {margin >= 1 ? `margin ${say(state, 'margin', 2)}` : 'slips'} at {say(state, 'power', 2)}
      </text>
      <Handle
        model={whatTensionBuys}
        state={state}
        x={at}
        y={bottom}
        input="power"
        label="Change the cutting power"
        drag="x"
        perUnit={MOST_POWER / (right - left)}
      />
    </g>
  );
}

/** The whole plot. */
export function MarginPlot(props: PartProps) {
  const { state, layout } = props;
  return (
    <g>
      {[0, 1, 2].map((place) => (
        <Slips key={place} {...props} place={place} />
      ))}
      <text class="note" x={layout.names} y={layout.slips + 3 * layout.line}>
        tension, and the power at which the band slips
      </text>
      <Axes {...props} />
      {linesOf(state.values).map(({ stress, slips }, place) => (
        <path
          key={place}
          class={place === 0 ? 'steel-line' : 'steel-thin'}
          d={lineOf(state, layout, stress, slips)}
        />
      ))}
      <Cutting {...props} />
    </g>
  );
}
