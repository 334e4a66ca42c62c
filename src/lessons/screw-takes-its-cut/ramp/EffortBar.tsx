/**
 * The work of one turn of the handle as a bar: what reaches the wheel, what thread and collar turn into heat; widths to
 * scale. A reader's guess of what reaches the wheel is measured on the same bar.
 * Units: shares in the state; drawing units otherwise.
 */

import { Hatch } from '../../../figures/Hatch.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import type { BarLayout } from './layout.ts';

interface EffortBarProps {
  readonly state: State;
  readonly bar: BarLayout;
  /** What the reader guessed, in the figure that shows it. */
  readonly guess?: number | undefined;
}

const PARTS = [
  { name: 'efficiency', words: 'reaches the wheel', short: 'arrives', ink: 'steel' },
  { name: 'threadShare', words: 'heat in the thread', short: 'thread', ink: 'ink' },
  { name: 'collarShare', words: 'heat under the collar', short: 'collar', ink: 'ink' },
] as const;
const ANCHORS = ['start', 'middle', 'end'] as const;

/** Where each part starts and how wide it is. */
function parts({ values }: State, { left, right }: BarLayout) {
  let start = left;
  return PARTS.map((part) => {
    const share = Math.max(0, values[part.name]);
    const place = { ...part, share, x: start, width: share * (right - left) };
    start += place.width;
    return place;
  });
}

type Part = ReturnType<typeof parts>[number];

function Block({ part, state, bar }: EffortBarProps & { readonly part: Part }) {
  const { top, height } = bar;
  const { x, width, name } = part;
  return (
    <g data-sym={name}>
      {name === 'efficiency' && (
        <rect class="steel-fill" x={x} y={top} width={width} height={height} />
      )}
      {name === 'collarShare' && (
        <Hatch id={`${state.idPrefix}-collar`} x={x} y={top} width={width} height={height} />
      )}
      <rect class="outline" x={x} y={top} width={width} height={height} />
    </g>
  );
}

/** Words of a part above the bar, at the left, in the middle and at the right, so that they never meet. */
function Words({ list, state, bar }: EffortBarProps & { readonly list: readonly Part[] }) {
  const places = [bar.left, (bar.left + bar.right) / 2, bar.right] as const;
  return (
    <g>
      {list.map(({ name, words, short, ink, share, x, width }, place) => (
        <g key={name}>
          <text
            class={ink}
            x={places[place]}
            y={bar.top - 14}
            text-anchor={ANCHORS[place]}
            data-sym={name}
          >
            {state.narrow ? short : words}{' '}
            {formatQuantity(share, 'percent', state.system, { digits: 2 })}
          </text>
          {share > 0 && (
            <path class="axis" d={`M${places[place]} ${bar.top - 9}L${x + width / 2} ${bar.top}`} />
          )}
        </g>
      ))}
    </g>
  );
}

/** A dashed bracket as long as the guess, under the bar that is as long as the truth. */
function Guess({ guess, bar }: { readonly guess: number; readonly bar: BarLayout }) {
  const end = bar.left + guess * (bar.right - bar.left);
  const y = bar.top + bar.height + 7;
  const isLong = guess > 0.5;
  return (
    <g>
      <path class="hand-line" stroke-dasharray="6 4" d={`M${bar.left} ${y}H${end}`} />
      <path class="hand-line" d={`M${end} ${y - 5}V${y + 5}`} />
      <text
        class="halo hand"
        x={isLong ? end : Math.max(bar.left, end)}
        y={y + 17}
        text-anchor={isLong ? 'end' : 'start'}
      >
        your guess
      </text>
    </g>
  );
}

/** The bar with its words, and the guess if there is one. */
export function EffortBar(props: EffortBarProps) {
  const { state, bar, guess } = props;
  const list = parts(state, bar);
  return (
    <g>
      {list.map((part) => (
        <Block key={part.name} {...props} part={part} />
      ))}
      <Words {...props} list={list} />
      {guess !== undefined && <Guess guess={guess} bar={bar} />}
    </g>
  );
}
