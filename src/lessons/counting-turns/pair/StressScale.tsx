/**
 * The stress that the turn has added on both mills as two bars on one scale, and the reader's guess for the second.
 * Units: SI in the state; drawing units otherwise.
 */
import { LevelTicks } from '../../../figures/axis-ticks.tsx';
import { linearScale, type Scale, ticks } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { unitLabel } from '../../../units/label.ts';
import { INPUTS } from '../inputs.ts';
import type { State } from '../state.ts';
import type { PairLayout } from './layout.ts';
import { type NutValues, softNut, stiffNut } from './nut-values.ts';

const MOST = 300e6; // so that the words of the highest guess are left of the scale's end
const BAR = { height: 11, stiff: 50, soft: 31 } as const; // tops above the scale's line
const FIRST = { turns: INPUTS.turnsBoth.default, slack: INPUTS.slackBoth.default } as const;

interface ScaleProps {
  readonly state: State;
  readonly layout: PairLayout;
}

interface BarProps extends ScaleProps {
  readonly x: Scale;
  readonly nut: NutValues;
  readonly above: number;
}

/** Name and value left of the scale, where nothing on it can cross them; the bar on it. */
function StressBar({ state, layout: { stress }, x, nut, above }: BarProps) {
  const top = stress.y - above;
  const value = formatQuantity(nut.stress, 'stress', state.system);
  return (
    <g>
      <text x={stress.names} y={top + BAR.height - 1}>
        {nut.mill.place}
      </text>
      <text class="steel" x={stress.left - 10} y={top + BAR.height - 1} text-anchor="end">
        {value}
      </text>
      <rect
        class="steel-fill"
        x={stress.left}
        y={top}
        width={x(nut.stress) - stress.left}
        height={BAR.height}
        data-sym={nut.tensioner === 'softSpring' ? 'stressSoft' : 'stressStiff'}
      />
    </g>
  );
}

/** What the guess was of: said as soon as turns or slack are other than they were then. */
function guessWords({ values, system, narrow }: State): string {
  const isFirst = values.turnsBoth === FIRST.turns && values.slackBoth === FIRST.slack;
  if (isFirst) return 'your guess';
  const turns = formatQuantity(FIRST.turns, 'turns', system);
  return narrow ? `guess, ${turns}` : `your guess for ${turns} without slack`;
}

/** Under the second bar, since it is a guess of that bar's length. */
function GuessMark({ state, layout: { stress }, x }: ScaleProps & { readonly x: Scale }) {
  if (state.guess === undefined) return null;
  const place = x(state.guess);
  return (
    <g>
      <path
        class="hand-line"
        stroke-dasharray="5 3"
        d={`M${place} ${stress.y - BAR.soft - 4}V${stress.y}`}
      />
      <text class="hand" x={place + 6} y={stress.y - 6}>
        {guessWords(state)}
      </text>
    </g>
  );
}

/** Both bars, the scale, the guess. */
export function StressScale({ state, layout }: ScaleProps) {
  const { left, right, y } = layout.stress;
  const x = linearScale([0, MOST], [left, right]);
  const common = { state, layout, x };
  return (
    <g>
      <StressBar {...common} nut={stiffNut(state)} above={BAR.stiff} />
      <StressBar {...common} nut={softNut(state)} above={BAR.soft} />
      <path class="axis" d={`M${left} ${y - BAR.stiff - 4}V${y}H${right}`} />
      <LevelTicks
        ticks={ticks(0, MOST, 'stress', state.system, layout.narrow ? 3 : 6)}
        x={x}
        y={y}
        drop={19}
      />
      <text class="note" x={layout.stress.names} y={y + 19}>
        {layout.narrow ? 'stress' : 'stress in the band'}, {unitLabel('stress', state.system)}
      </text>
      <GuessMark {...common} />
    </g>
  );
}
