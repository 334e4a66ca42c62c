/**
 * The causes as bars on one scale, the largest on top, under the bar of all together; an outline shows where each was
 * before anything was changed.
 * Units: Pa in the bars; drawing units otherwise.
 */
import { linearScale } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import { CAUSES, type Cause, uncertainty } from './causes.ts';
import type { BudgetLayout } from './layout.ts';

/** What each cause is called. */
export const CAUSE_WORDS: Readonly<Record<Cause, string>> = {
  line: 'scatter and straightening',
  dial: 'the dial itself',
  modulus: 'Young’s modulus',
  warmth: 'bar and band not equally warm',
  noLoad: 'no-load torque',
  bar: 'length and angle of the bar',
};

/** The same in a sentence. */
export const SHORT_WORDS: typeof CAUSE_WORDS = {
  line: 'the scatter',
  dial: 'the dial',
  modulus: 'Young’s modulus',
  warmth: 'warmth',
  noLoad: 'the no-load torque',
  bar: 'the bar',
};

const MOST = 33e6; // Pa, a little more than the shortest bar leaves
const UNCHANGED = 1e3; // Pa: nobody would see more

interface BarProps {
  readonly layout: BudgetLayout;
  readonly state: State;
  readonly y: number;
  readonly name: string;
  readonly now: number;
  readonly start: number;
  readonly isWhole?: boolean;
}

/** A bar with its name and its ±; it moves as a whole to its rank. */
function Bar({ layout, state, y, name, now, start, isWhole = false }: BarProps) {
  const { narrow, left, right, numbers, thick } = layout;
  const isChanged = Math.abs(now - start) > UNCHANGED;
  const length = linearScale([0, MOST], [0, right - left]);
  const words = narrow ? -9 : thick - 4;
  const end = left + length(Math.max(now, start)) + 12;
  return (
    <g transform={`translate(0 ${y})`}>
      <text x={narrow ? left : left - 12} y={words} text-anchor={narrow ? 'start' : 'end'}>
        {name}
      </text>
      <text
        class={isWhole ? 'steel' : undefined}
        x={narrow ? numbers : end}
        y={words}
        text-anchor={narrow ? 'end' : 'start'}
      >
        ±{'\u00a0'}
        {formatQuantity(now, 'stress', state.system)}
      </text>
      <rect
        class={isWhole ? 'steel-fill' : 'ink-fill'}
        x={left}
        width={length(now)}
        height={thick}
      />
      {isChanged && (
        <rect class="hidden-edge" x={left} y={-3} width={length(start)} height={thick + 6} />
      )}
    </g>
  );
}

/** The causes, the largest first. */
export function ranked(parts: Readonly<Record<Cause, number>>): readonly Cause[] {
  return [...CAUSES].sort((one, other) => parts[other] - parts[one]);
}

interface BarsProps {
  readonly state: State;
  readonly layout: BudgetLayout;
  readonly start: ReturnType<typeof uncertainty>;
}

/** All of them. */
export function Bars({ state, layout, start }: BarsProps) {
  const { barLength, change } = state.values;
  const { parts, whole } = uncertainty(barLength, change);
  const order = ranked(parts);
  return (
    <g>
      <Bar
        layout={layout}
        state={state}
        y={layout.whole}
        name="all together"
        now={whole}
        start={start.whole}
        isWhole
      />
      {CAUSES.map((cause) => (
        <Bar
          key={cause}
          layout={layout}
          state={state}
          y={layout.first + order.indexOf(cause) * layout.step}
          name={CAUSE_WORDS[cause]}
          now={parts[cause]}
          start={start.parts[cause]}
        />
      ))}
    </g>
  );
}
