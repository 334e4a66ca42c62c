/**
 * The bend in times the tension on a rule of its own: as it is drawn above, and the guess beside the truth for the wheel
 * and the band that were asked about.
 * Units: no unit in the ratios; drawing units.
 */
import { LevelTicks } from '../../../figures/axis-ticks.tsx';
import { linearScale, ticks } from '../../../figures/scale.ts';
import { teller } from '../../../figures/teller.ts';
import { evaluated, inputsAt } from '../../../models/define-model.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { UnitSystem } from '../../../units/kinds.ts';
import { asked, roundTheWheel } from '../model.ts';
import type { State } from '../state.ts';
import type { BendLayout } from './layout.ts';

const MOST = 13;
const HEIGHT = 10;
const say = teller(roundTheWheel);

/** What the guess should come to. */
export const truth = (system: UnitSystem): number =>
  evaluated(roundTheWheel, inputsAt(roundTheWheel, asked, system)).bendTimes;

interface PartProps {
  readonly state: State;
  readonly layout: BendLayout;
}

interface MarkProps {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly ink: 'hand' | 'steel';
  readonly text: string;
}

/** A ratio as a line from nought with a stroke at its end, and its name. */
function Mark({ from, to, y, ink, text }: MarkProps) {
  return (
    <g>
      <path
        class={`${ink}-line`}
        stroke-dasharray={ink === 'hand' ? '6 4' : undefined}
        d={`M${from} ${y}H${to}`}
      />
      <path class={`${ink}-line`} d={`M${to} ${y - 6}V${y + 6}`} />
      <text class={`${ink} halo`} x={to + 8} y={y + 5}>
        {text}
      </text>
    </g>
  );
}

function GuessAndTruth({ state, layout }: PartProps) {
  const { guess, system } = state;
  if (guess === undefined) return null;
  const { left, right, guess: upper, truth: lower } = layout.rule;
  const x = linearScale([0, MOST], [left, right]);
  const times = (ratio: number) => `${formatQuantity(ratio, 'ratio', system, { digits: 2 })} times`;
  const atAsked = truth(system);
  return (
    <g>
      <Mark from={left} to={x(guess)} y={upper} ink="hand" text={`guess ${times(guess)}`} />
      <Mark from={left} to={x(atAsked)} y={lower} ink="steel" text={`truth ${times(atAsked)}`} />
    </g>
  );
}

/** Rule, bar, guess and truth. */
export function TimesRule({ state, layout }: PartProps) {
  const { left, right, y, words } = layout.rule;
  const { bendTimes } = state.values;
  const x = linearScale([0, MOST], [left, right]);
  return (
    <g>
      <text x={left} y={words}>
        the bend, in times the tension:{' '}
        <tspan class="steel" data-sym="bendTimes">
          {say(state, 'bendTimes', 2)}
        </tspan>
      </text>
      <rect
        class="steel-fill"
        x={left}
        y={y - HEIGHT}
        width={x(bendTimes) - left}
        height={HEIGHT}
      />
      <path class="axis" d={`M${left} ${y}H${right}`} />
      <LevelTicks ticks={ticks(0, MOST, 'ratio', state.system, 6)} x={x} y={y} drop={20} />
      <GuessAndTruth state={state} layout={layout} />
    </g>
  );
}
