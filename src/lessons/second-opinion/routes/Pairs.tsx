/**
 * How the routes agree two by two: a bracket from row to row on a wide page, a list on a phone. A heavy line is a pair that
 * disagrees.
 * Units: none.
 */
import { formatNumber } from '../../../units/format-number.ts';
import type { State } from '../state.ts';
import type { RoutesLayout } from './layout.ts';

/** The pairs with the rows that they join, their agreement numbers, and whether that is within one. */
export function pairsOf({ values }: State) {
  const { dialPluck, pluckPress, dialPress } = values;
  const pairs = [
    { names: ['dial', 'note'], rows: [0, 1], number: dialPluck },
    { names: ['note', 'weight'], rows: [1, 2], number: pluckPress },
    { names: ['dial', 'weight'], rows: [0, 2], number: dialPress },
  ] as const;
  return pairs.map((pair) => ({ ...pair, agrees: Math.abs(pair.number) <= 1 }));
}

type Pair = ReturnType<typeof pairsOf>[number];

interface PairsProps {
  readonly state: State;
  readonly layout: RoutesLayout;
}

const lineOf = ({ agrees }: Pair) => (agrees ? 'thin' : 'limit');
const wordOf = ({ agrees }: Pair) => (agrees ? 'agree' : 'disagree');
const numberOf = ({ number }: Pair) => formatNumber(number, { decimals: 2 });

/** A bracket between two rows, the outer pair further right, with what it says beside it. */
function Bracket({ pair, layout }: { readonly pair: Pair; readonly layout: RoutesLayout }) {
  const [from, to] = pair.rows;
  const isOuter = to - from > 1;
  const { x, outer } = layout.pairs;
  const at = isOuter ? outer : x;
  const [top, bottom] = [layout.rows[from] + 6, layout.rows[to] - 6];
  return (
    <g>
      <path class={lineOf(pair)} d={`M${at - 10} ${top}H${at}V${bottom}H${at - 10}`} />
      <text x={at + 12} y={(top + bottom) / 2 - 4}>
        {numberOf(pair)}
      </text>
      <text x={at + 12} y={(top + bottom) / 2 + 15}>
        {wordOf(pair)}
      </text>
    </g>
  );
}

/** A line of the list, with its pair in words. */
function Line({ pair, x, y }: { readonly pair: Pair; readonly x: number; readonly y: number }) {
  return (
    <g transform={`translate(${x} ${y})`}>
      <path class={lineOf(pair)} d="M0 -13V4" />
      <text x={12}>{pair.names.join(' and ')}</text>
      <text x={180} text-anchor="end">
        {numberOf(pair)}
      </text>
      <text x={200}>{wordOf(pair)}</text>
    </g>
  );
}

/** All three pairs. */
export function Pairs({ state, layout }: PairsProps) {
  const { x, y, line } = layout.pairs;
  return (
    <g>
      {pairsOf(state).map((pair, place) =>
        state.narrow ? (
          <Line key={pair.names.join()} pair={pair} x={x} y={y + place * line} />
        ) : (
          <Bracket key={pair.names.join()} pair={pair} layout={layout} />
        ),
      )}
    </g>
  );
}
