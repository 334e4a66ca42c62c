/**
 * The account of growth at the movable wheel: what the band gains, less what frame and wheels take up, leaves slack; or a band
 * that is too short.
 * Units: SI in the state; drawing units otherwise.
 */
import { signed } from '../signed.ts';
import type { State } from '../state.ts';
import { accountScale, type LoopLayout } from './layout.ts';

interface AccountProps {
  readonly state: State;
  readonly layout: LoopLayout;
}

/** The rows, the last under a line. */
function rowsOf({ bandGain, frameTakes, wheelsTake, slackNow }: State['values']) {
  return [
    { name: 'band', size: bandGain, ink: 'steel', sym: 'bandGain' },
    { name: 'frame', size: 0 - frameTakes, ink: 'ink', sym: 'frameTakes' },
    { name: 'wheels', size: 0 - wheelsTake, ink: 'ink', sym: 'wheelsTake' },
    { name: slackNow < 0 ? 'too short' : 'slack', size: slackNow, ink: 'steel', sym: 'slackNow' },
  ] as const;
}

/** Four bars about one nought. */
export function Account({ state, layout }: AccountProps) {
  const { left, right, zero, y, row, bar, drop, sum } = layout.account;
  const x = accountScale(layout);
  const rows = rowsOf(state.values);
  const last = y + (rows.length - 1) * row;
  return (
    <g>
      {rows.map(({ name, size, ink, sym }, place) => {
        const top = y + place * row;
        return (
          <g key={sym} data-sym={sym}>
            <text x={left} y={top}>
              {name}
            </text>
            <text class={ink === 'steel' ? 'steel' : ''} x={right} y={top} text-anchor="end">
              {signed(size, 'stretch', state.system)}
            </text>
            <rect
              class={`${ink}-fill`}
              x={Math.min(zero, x(size))}
              y={top + drop}
              width={Math.abs(x(size) - zero)}
              height={bar}
            />
            <path class="axis" d={`M${zero} ${top + drop - 3}v${bar + 6}`} />
          </g>
        );
      })}
      <path class="outline" d={`M${left} ${last - (drop < 0 ? 26 : 18)}H${right}`} />
      <g data-sym="changeNow">
        <text x={left} y={sum}>
          tension
        </text>
        <text class="steel" x={right} y={sum} text-anchor="end">
          {signed(state.values.changeNow, 'stress', state.system, 2)}
        </text>
      </g>
    </g>
  );
}
