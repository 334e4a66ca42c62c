/**
 * The zeros beside each other on the plot's scale, each with what it may be off, and in a table with what they mean; one
 * after the other, as the reader asks for them.
 * Units: SI in the state; drawing units otherwise.
 */
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import { seriesLayout, seriesScales } from './layout.ts';

const HALF_END = 5; // of an interval's end strokes

interface PlacedZero {
  readonly key: string;
  readonly name: string;
  readonly ink: 'hand' | 'ink' | 'steel';
  readonly zero: number;
  readonly ends?: readonly [number, number];
}

function zerosOf({ values }: State): readonly PlacedZero[] {
  const { way, eyeZero, classroomZero, classroomReach, fullZero, fullLow, fullHigh } = values;
  const mine: PlacedZero = { key: 'eye', name: 'your zero', ink: 'hand', zero: eyeZero };
  const classroom: PlacedZero = {
    key: 'classroom',
    name: 'classroom rule',
    ink: 'ink',
    zero: classroomZero,
    ends: [classroomZero - classroomReach, classroomZero + classroomReach],
  };
  const full: PlacedZero = {
    key: 'full',
    name: 'all readings',
    ink: 'steel',
    zero: fullZero,
    ends: [fullLow, fullHigh],
  };
  if (way === 'eye') return [mine];
  return way === 'full' ? [mine, classroom, full] : [mine, classroom];
}

interface ColumnProps {
  readonly zero: PlacedZero;
  readonly at: number;
  readonly y: (dial: number) => number;
}

function Column({ zero: { ink, zero, ends }, at, y }: ColumnProps) {
  const line = ink === 'ink' ? 'outline' : `${ink}-line`;
  const [from, to] = [at - HALF_END, at + HALF_END];
  return (
    <g>
      {ends && (
        <path
          class={line}
          d={`M${at} ${y(ends[0])}V${y(ends[1])}M${from} ${y(ends[0])}H${to}M${from} ${y(ends[1])}H${to}`}
        />
      )}
      <circle class={`${ink}-fill`} cx={at} cy={y(zero)} r={5} />
    </g>
  );
}

/** The true zero, which only the bench knows, as a level through all columns. */
function Truth({ state }: { readonly state: State }) {
  if (state.values.way !== 'full') return null;
  const { columns, plot } = seriesLayout(state.narrow);
  const level = seriesScales(state.narrow).y(state.values.trueZero);
  return <path class="limit" d={`M${plot.right + 6} ${level}H${(columns.at(-1) ?? 0) + 14}`} />;
}

interface RowProps {
  readonly state: State;
  readonly zero: PlacedZero;
  readonly place: number;
}

function Row({ state, zero, place }: RowProps) {
  const { table } = seriesLayout(state.narrow);
  const [left, right] = table.columns;
  const { ink, name, ends } = zero;
  const uncertainty = ends && (ends[1] - ends[0]) / 2;
  return (
    <g transform={`translate(0 ${table.top + place * table.row})`}>
      <text class={ink} x={left}>
        {name}
      </text>
      <text class={ink} x={right} text-anchor="end">
        {formatQuantity(zero.zero, 'stretch', state.system, { uncertainty })}
      </text>
    </g>
  );
}

function TruthRow({ state }: { readonly state: State }) {
  const { table } = seriesLayout(state.narrow);
  const [left, right] = table.columns;
  if (state.values.way !== 'full') return null;
  return (
    <g transform={`translate(0 ${table.top + 3 * table.row})`}>
      <text x={left}>the truth</text>
      <text x={right} text-anchor="end">
        {formatQuantity(state.values.trueZero, 'stretch', state.system)}
      </text>
    </g>
  );
}

/** Columns and table. */
export function Zeros({ state }: { readonly state: State }) {
  const { columns } = seriesLayout(state.narrow);
  const { y } = seriesScales(state.narrow);
  const zeros = zerosOf(state);
  return (
    <g>
      <Truth state={state} />
      {zeros.map((zero, place) => (
        <g key={zero.key}>
          <Column zero={zero} at={columns[place] ?? 0} y={y} />
          <Row state={state} zero={zero} place={place} />
        </g>
      ))}
      <TruthRow state={state} />
    </g>
  );
}
