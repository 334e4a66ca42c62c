/**
 * One setting at three moments, each a bar on one scale: cold, warm, and cold again after it was tightened warm.
 * Units: SI in the state; drawing units otherwise.
 */
import { LevelTicks } from '../../../figures/axis-ticks.tsx';
import { ticks } from '../../../figures/scale.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { unitLabel } from '../../../units/label.ts';
import type { State } from '../state.ts';
import { type ChecksLayout, ENDS, stressScale } from './layout.ts';

const BAR = 16;

interface PartProps {
  readonly state: State;
  readonly layout: ChecksLayout;
}

/** What each row is of; a check on a mill that has cooled is no warm check. */
function rowsOf({ values, narrow }: State) {
  const { warmer, setting, warmStress, againStress } = values;
  const cooled = warmer < 0;
  const check = cooled ? 'colder check, screw untouched' : 'warm check, screw untouched';
  const again = cooled ? 'let down to the setting, warm again' : 'tightened warm, cold again';
  return [
    {
      name: narrow ? 'at the setting' : 'at the setting, mill cold',
      stress: setting,
      sym: 'setting',
    },
    { name: check, stress: warmStress, sym: 'warmStress' },
    { name: again, stress: againStress, sym: 'againStress' },
  ] as const;
}

/** The rows, the line of the setting through them, the axis. */
export function Rows({ state, layout }: PartProps) {
  const { left, right, rows, above, axis } = layout;
  const x = stressScale(layout);
  const setting = x(state.values.setting);
  return (
    <g>
      {rowsOf(state).map(({ name, stress, sym }, place) => {
        const y = rows[place] ?? 0;
        return (
          <g key={sym} data-sym={sym}>
            <text x={left} y={y - above}>
              {name}
            </text>
            <text class="steel" x={right} y={y - above} text-anchor="end">
              {formatQuantity(stress, 'stress', state.system, { digits: 3 })}
            </text>
            <rect
              class="steel-fill"
              x={left}
              y={y - BAR / 2}
              width={x(stress) - left}
              height={BAR}
            />
            <path class="limit" d={`M${setting} ${y - BAR / 2 - 4}v${BAR + 8}`} />
          </g>
        );
      })}
      <path class="axis" d={`M${left} ${axis}H${right}`} />
      <LevelTicks
        ticks={ticks(ENDS[0], ENDS[1], 'stress', state.system, state.narrow ? 3 : 5)}
        x={x}
        y={axis}
        drop={20}
      />
      <text class="note" x={right} y={axis + 40} text-anchor="end">
        stress, {unitLabel('stress', state.system)}
      </text>
    </g>
  );
}
