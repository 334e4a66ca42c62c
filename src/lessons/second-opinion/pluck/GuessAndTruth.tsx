/**
 * The reader's guess of the note beside the truth for the span that was asked about, on the scale of the tones.
 * Units: SI in the state; drawing units otherwise.
 */
import { evaluated, inputsAt } from '../../../models/define-model.ts';
import { asked, secondOpinion } from '../model.ts';
import type { State } from '../state.ts';
import type { PluckLayout } from './layout.ts';
import { hertz, toneScale } from './tones.ts';

/** A frequency as a short stroke with its words on the side where there is room. */
function Mark({
  at,
  y,
  ink,
  text,
  end,
}: {
  readonly at: number;
  readonly y: number;
  readonly ink: 'hand' | 'steel';
  readonly text: string;
  readonly end: number;
}) {
  const isRight = at < end;
  return (
    <g>
      <path class={`${ink}-line`} d={`M${at} ${y - 7}v14`} />
      <text
        class={`${ink} halo`}
        x={at + (isRight ? 8 : -8)}
        y={y + 5}
        text-anchor={isRight ? 'start' : 'end'}
      >
        {text}
      </text>
    </g>
  );
}

/** Both marks; nothing before the guess. */
export function GuessAndTruth({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: PluckLayout;
}) {
  const { guess, system } = state;
  if (guess === undefined) return null;
  const x = toneScale(layout);
  const { axis, width } = layout;
  const { pitch } = evaluated(secondOpinion, inputsAt(secondOpinion, asked, system));
  const end = width * 0.6;
  return (
    <g>
      <Mark
        at={x(guess)}
        y={axis.guess}
        ink="hand"
        text={`your guess ${hertz(guess, state)}`}
        end={end}
      />
      <Mark
        at={x(pitch)}
        y={axis.truth}
        ink="steel"
        text={`the truth ${hertz(pitch, state)}`}
        end={end}
      />
    </g>
  );
}
