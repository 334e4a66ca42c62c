/**
 * What the dial has traveled since the band was slack, in rows on one scale: straightening, stretch, both together; and
 * once it is there the reader's guess of the stretch at the torque that was asked about, with the truth.
 * Units: SI in the state; drawing units otherwise.
 */
import { linearScale } from '../../../figures/scale.ts';
import { teller } from '../../../figures/teller.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { whereIsZero } from '../model.ts';
import type { State } from '../state.ts';
import { toeLayout } from './layout.ts';

const say = teller(whereIsZero);

const ENDS = [-0.23e-3, 0.46e-3] as const; // m

interface TravelRow {
  readonly name: string;
  readonly travel: number;
  readonly line: 'outline' | 'steel-line' | 'hand-line';
  readonly fill: string;
  readonly dashes?: string;
}

function rowsOf(state: State): readonly TravelRow[] {
  const { values, guess } = state;
  const { straightened, stretch, dialFromSlack, topStretch } = values;
  const asked = say(state, 'topTorque');
  const now: readonly TravelRow[] = [
    { name: 'straightening', travel: straightened, line: 'outline', fill: 'paper-fill' },
    { name: '+ stretch', travel: stretch, line: 'steel-line', fill: 'steel-wash' },
    { name: '= dial', travel: dialFromSlack, line: 'outline', fill: 'shade-fill' },
  ];
  if (guess === undefined) return now;
  return [
    ...now,
    {
      name: `guess at ${asked}`,
      travel: guess,
      line: 'hand-line',
      fill: 'hand-wash',
      dashes: '5 3',
    },
    { name: `truth at ${asked}`, travel: topStretch, line: 'steel-line', fill: 'steel-wash' },
  ];
}

const inkOf = (line: TravelRow['line']) => (line === 'outline' ? '' : line.replace('-line', ''));

/** The rows. */
export function TravelRows({ state }: { readonly state: State }) {
  const { rows } = toeLayout(state.narrow);
  const x = linearScale(ENDS, [rows.left, rows.right]);
  const high = rows.row * 0.62;
  const all = rowsOf(state);
  return (
    <g>
      {all.map(({ name, travel, line, fill, dashes }, place) => {
        const y = rows.top + place * rows.row;
        const [from, to] = [Math.min(0, travel), Math.max(0, travel)];
        return (
          <g key={name} transform={`translate(0 ${y})`}>
            <text class={inkOf(line)} x={rows.words} y={high - 2}>
              {name}
            </text>
            <rect
              class={`${line} ${fill}`}
              x={x(from)}
              width={x(to) - x(from)}
              height={high}
              stroke-dasharray={dashes}
            />
            <text class={inkOf(line)} x={rows.numbers} y={high - 2} text-anchor="end">
              {formatQuantity(travel, 'stretch', state.system)}
            </text>
          </g>
        );
      })}
      <path class="axis" d={`M${x(0)} ${rows.top - 5}V${rows.top + 3 * rows.row}`} />
    </g>
  );
}
