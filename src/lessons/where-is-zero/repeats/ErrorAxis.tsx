/**
 * The scale under both histograms: how far a zero is off, and what that is in stress, on the side where it counts.
 * Units: SI; drawing units otherwise.
 */
import { LevelTicks } from '../../../figures/axis-ticks.tsx';
import { ticks } from '../../../figures/scale.ts';
import { unitLabel } from '../../../units/label.ts';
import type { State } from '../state.ts';
import { errorScale, repeatsLayout } from './layout.ts';
import { REACH } from './rules.ts';

/** Ticks, the true zero through both histograms, and the sign of the error in words. */
export function ErrorAxis({ state }: { readonly state: State }) {
  const { narrow, system } = state;
  const layout = repeatsLayout(narrow);
  const { left, right, grounds, high } = layout;
  const x = errorScale(layout);
  const [upper, lower] = grounds;
  const edge = REACH * 0.96; // so that no number leaves the sheet
  return (
    <g>
      <path
        class="steel-line"
        d={[upper, lower].map((ground) => `M${x(0)} ${ground - high}V${ground}`).join('')}
      />
      <LevelTicks
        ticks={ticks(-edge, edge, 'stretch', system, narrow ? 5 : 7)}
        x={x}
        y={lower}
        drop={19}
      />
      <text class="note" x={left} y={lower + 40}>
        {narrow ? 'stress too high' : 'zero too low, stress too high'}
      </text>
      <text class="note" x={(left + right) / 2} y={lower + 40} text-anchor="middle">
        error, {unitLabel('stretch', system)}
      </text>
      <text class="note" x={right} y={lower + 40} text-anchor="end">
        {narrow ? 'stress too low' : 'zero too high, stress too low'}
      </text>
    </g>
  );
}
