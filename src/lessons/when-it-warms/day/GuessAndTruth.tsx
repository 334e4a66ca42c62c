/**
 * The reader's guess of what is gone after the first hour, and what is: two levels in the strip of the screw, from that hour
 * to their names at its right end.
 * Units: shares of the setting; drawing units.
 */

import { defaults, evaluated } from '../../../models/define-model.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { whenItWarms } from '../model.ts';
import type { State } from '../state.ts';
import { NAMED } from './hours.ts';
import { changeScale, type DayLayout, timeScale } from './layout.ts';

interface PartProps {
  readonly state: State;
  readonly layout: DayLayout;
}

/** Both levels; nothing before the guess. */
export function GuessAndTruth({ state, layout }: PartProps) {
  const { guess, system, narrow } = state;
  if (guess === undefined) return null;
  const y = changeScale(layout, layout.strips.screw);
  const line = narrow ? 14 : 18;
  const from = timeScale(layout)(NAMED.first);
  const truth = evaluated(whenItWarms, defaults(whenItWarms, system)).firstShare;
  const [guessed, true_] = [y(-guess), y(-truth)];
  const apart = guessed > true_ ? Math.max(guessed, true_ + line) : Math.min(guessed, true_ - line);
  const say = (share: number) =>
    narrow ? '' : ` −${formatQuantity(share, 'percent', system, { digits: 2 })}`;
  const x = layout.right + 4;
  return (
    <g>
      <path class="hand-line" stroke-dasharray="6 4" d={`M${from} ${guessed}H${layout.right}`} />
      <path class="steel-thin" d={`M${from} ${true_}H${layout.right}`} />
      <text class="hand" x={x} y={apart + 5}>
        {narrow ? 'guess' : `your guess${say(guess)}`}
      </text>
      <text class="steel" x={x} y={true_ + 5}>
        {narrow ? 'truth' : `the truth${say(truth)}`}
      </text>
    </g>
  );
}
