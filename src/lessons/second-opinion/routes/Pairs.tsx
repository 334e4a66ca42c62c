/**
 * How the routes agree two by two: a bracket from row to row on a wide page, a list on a phone.
 * Units: none.
 */
import { formatNumber } from '../../../units/format-number.ts';
import type { State } from '../state.ts';
import type { RoutesLayout } from './layout.ts';

/** The pairs with their agreement numbers, and whether that is within one. */
export function pairsOf({ values }: State) {
  const { dialPluck, pluckPress, dialPress } = values;
  const pairs = [
    { names: ['dial', 'note'], number: dialPluck },
    { names: ['note', 'weight'], number: pluckPress },
    { names: ['dial', 'weight'], number: dialPress },
  ] as const;
  return pairs.map((pair) => ({ ...pair, agrees: Math.abs(pair.number) <= 1 }));
}

interface PairsProps {
  readonly state: State;
  readonly layout: RoutesLayout;
}

/** Three lines of words, each with its agreement number. */
export function Pairs({ state, layout }: PairsProps) {
  const { x, y, line } = layout.pairs;
  return (
    <g>
      {pairsOf(state).map(({ names, number, agrees }, place) => (
        <g key={names.join()} transform={`translate(${x} ${y + place * line})`}>
          <path class={agrees ? 'thin' : 'limit'} d="M0 -13V5" />
          <text x={12}>{names.join(' and ')}</text>
          <text x={12} y={0} dx={state.narrow ? 110 : 130}>
            {formatNumber(number, { decimals: 2 })}
          </text>
          <text x={12} dx={state.narrow ? 170 : 190} class={agrees ? 'note' : ''}>
            {agrees ? 'agree' : 'disagree'}
          </text>
        </g>
      ))}
    </g>
  );
}
