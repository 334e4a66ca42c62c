/**
 * The work of one turn of the handle as a bar: what arrives at the wheel, what the thread keeps, what the collar
 * keeps; widths to scale. The reader's guess stands on it.
 * Units: shares in the state; drawing units otherwise.
 */

import { Hatch } from '../../../figures/Hatch.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { EfficiencyLayout } from '../efficiency/layout.ts';
import type { State } from '../state.ts';

interface PartProps {
  readonly state: State;
  readonly layout: EfficiencyLayout;
}

const PARTS = [
  { name: 'efficiency', words: 'arrives', short: 'arrives', ink: 'steel' },
  { name: 'threadShare', words: 'thread keeps', short: 'thread', ink: 'ink' },
  { name: 'collarShare', words: 'collar keeps', short: 'collar', ink: 'ink' },
] as const;

/** Where each part starts and how wide it is. */
function parts({ values }: State, { plot }: EfficiencyLayout) {
  const whole = plot.right - plot.left;
  let start: number = plot.left;
  return PARTS.map((part) => {
    const share = Math.max(0, values[part.name]);
    const place = { ...part, share, x: start, width: share * whole };
    start += place.width;
    return place;
  });
}

type Part = ReturnType<typeof parts>[number];

function Block({ part, state, layout }: PartProps & { readonly part: Part }) {
  const { top, height } = layout.bar;
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
function Words({ list, state, layout }: PartProps & { readonly list: readonly Part[] }) {
  const { left, right } = layout.plot;
  const places = [left, (left + right) / 2, right] as const;
  const anchors = ['start', 'middle', 'end'] as const;
  return (
    <g>
      {list.map(({ name, words, short, ink, share, x, width }, place) => (
        <g key={name}>
          <text
            class={ink}
            x={places[place]}
            y={layout.bar.top - 22}
            text-anchor={anchors[place]}
            data-sym={name}
          >
            {layout.narrow ? short : words}{' '}
            {formatQuantity(share, 'percent', state.system, { digits: 2 })}
          </text>
          <path
            class="axis"
            d={`M${places[place]} ${layout.bar.top - 16}L${x + width / 2} ${layout.bar.top}`}
          />
        </g>
      ))}
    </g>
  );
}

function Guess({ guess, layout }: { readonly guess: number; readonly layout: EfficiencyLayout }) {
  const { plot, bar } = layout;
  const x = plot.left + guess * (plot.right - plot.left);
  const bottom = bar.top + bar.height;
  const anchor = guess < 0.15 ? 'start' : guess > 0.85 ? 'end' : 'middle';
  return (
    <g>
      <path class="hand-line" d={`M${x} ${bar.top - 6}V${bottom + 8}`} />
      <text class="halo hand" x={x} y={bottom + 22} text-anchor={anchor}>
        your guess: so much arrives
      </text>
    </g>
  );
}

/** The bar with its words. */
export function EffortBar({ state, layout }: PartProps) {
  const list = parts(state, layout);
  return (
    <g>
      {list.map((part) => (
        <Block key={part.name} part={part} state={state} layout={layout} />
      ))}
      <Words list={list} state={state} layout={layout} />
      {state.guess !== undefined && <Guess guess={state.guess} layout={layout} />}
    </g>
  );
}
