/**
 * The reader's guess of the teeth's movement and what it truly is for the span that was asked about, on the bars' scale.
 * Units: SI in the state; drawing units otherwise.
 */
import { evaluated, inputsAt } from '../../../models/define-model.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { asked, whatTensionBuys } from '../model.ts';
import type { State } from '../state.ts';
import type { PushLayout } from './layout.ts';

/** Both marks; nothing before the guess. */
export function GuessAndTruth({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: PushLayout;
}) {
  const { guess, system } = state;
  if (guess === undefined) return null;
  const { left, perMovement } = layout.bars;
  const { teeth } = evaluated(whatTensionBuys, inputsAt(whatTensionBuys, asked, system));
  const marks = [
    { moved: guess, y: layout.marks.guess, ink: 'hand', name: 'your guess' },
    { moved: teeth, y: layout.marks.truth, ink: 'steel', name: 'the truth' },
  ];
  return (
    <g>
      {marks.map(({ moved, y, ink, name }) => {
        const end = left + moved * perMovement;
        return (
          <g key={name}>
            <path class={`${ink}-line`} d={`M${left} ${y - 5}H${end}M${end} ${y - 10}v10`} />
            <text class={ink} x={end + 8} y={y}>
              {name} {formatQuantity(moved, 'length', system, { digits: 2 })}
            </text>
          </g>
        );
      })}
    </g>
  );
}
