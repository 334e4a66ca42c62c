/**
 * The zeros beside each other on the plot's scale, each with what it may be off, and the same in a table with what they
 * mean.
 * Units: SI in the state; drawing units otherwise.
 */
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import { seriesLayout, seriesScales } from './layout.ts';
import { type PlacedZero, placedZeros } from './placed-zeros.ts';

const HALF_END = 5; // of an interval's end strokes
const DOT = 5;
const NAME_AFTER = 18; // the mark of a row
const LINE = 19;

const lineOf = ({ ink }: PlacedZero) => (ink === 'ink' ? 'outline' : `${ink}-line`);

interface PartProps {
  readonly state: State;
  readonly zero: PlacedZero;
  readonly place: number;
}

/** Columns compare: a zero by itself is on the plot already. */
const isCompared = ({ values }: State) => values.way !== 'eye';

/** A zero with its interval; the truth, which only the bench knows, is a level through all columns. */
function Column({ state, zero, place }: PartProps) {
  const { columns, plot } = seriesLayout(state.narrow);
  const { y } = seriesScales(state.narrow);
  const level = y(zero.zero);
  if (zero.key === 'truth')
    return <path class="limit" d={`M${plot.right + 8} ${level}H${(columns.at(-1) ?? 0) + 12}`} />;
  const at = columns[place] ?? 0;
  const [from, to] = [at - HALF_END, at + HALF_END];
  const [low, high] = (zero.ends ?? [zero.zero, zero.zero]).map(y);
  return (
    <g>
      {zero.ends && (
        <path
          class={lineOf(zero)}
          d={`M${at} ${low}V${high}M${from} ${low}H${to}M${from} ${high}H${to}`}
        />
      )}
      <circle class={`${zero.ink}-fill`} cx={at} cy={level} r={DOT} />
    </g>
  );
}

/** A row of the table, with the mark that the zero has among the columns. */
function Row({ state, zero, place }: PartProps) {
  const { narrow, system } = state;
  const { table } = seriesLayout(narrow);
  const [left = 0, right] = table.columns;
  const { ink, name, reach, stress, stressReach } = zero;
  return (
    <g transform={`translate(0 ${table.top + place * table.row})`}>
      {zero.key === 'truth' ? (
        <path class="limit" d={`M${left} -5h${2 * DOT}`} />
      ) : (
        <circle class={`${ink}-fill`} cx={left + DOT} cy={-5} r={DOT} />
      )}
      <text class={ink} x={left + NAME_AFTER}>
        {name}
      </text>
      <text class={ink} x={right} text-anchor="end">
        {formatQuantity(zero.zero, 'stretch', system, { uncertainty: reach })}
      </text>
      {!narrow && (
        <text class="note" x={right} y={LINE} text-anchor="end">
          {formatQuantity(stress, 'stress', system, { uncertainty: stressReach })} at the top
        </text>
      )}
    </g>
  );
}

/** Columns and table. */
export function Zeros({ state }: { readonly state: State }) {
  return (
    <g>
      {placedZeros(state).map((zero, place) => (
        <g key={zero.key}>
          {isCompared(state) && <Column state={state} zero={zero} place={place} />}
          <Row state={state} zero={zero} place={place} />
        </g>
      ))}
    </g>
  );
}
