/**
 * The reader's guess of the stretch and what it truly is for the strip that was asked about, one under the other from
 * where the strip ends at rest, on the scale of the stretch above them.
 * Units: SI in the state; drawing units otherwise.
 */
import { formatQuantity } from '../../units/format-quantity.ts';
import { askedInputs } from './asked-inputs.ts';
import type { State } from './state.ts';
import type { StripLayout } from './strip-layout.ts';

interface MarkProps {
  readonly d: string;
  readonly x: number;
  readonly y: number;
  readonly ink: 'hand' | 'steel';
  readonly text: string;
}

/** A stretch as a line with a stroke at its end, and its name. */
function Mark({ d, x, y, ink, text }: MarkProps) {
  return (
    <g>
      <path class={`${ink}-line`} stroke-dasharray={ink === 'hand' ? '6 4' : undefined} d={d} />
      <path class={`${ink}-line`} d={`M${x} ${y - 6}V${y + 6}`} />
      <text class={`${ink} halo`} x={x + 8} y={y + 5}>
        {text}
      </text>
    </g>
  );
}

interface GuessAndTruthProps {
  readonly state: State;
  readonly layout: StripLayout;
  /** Where the strip ends when nothing pulls. */
  readonly rest: number;
}

/** Both marks; nothing before the guess. */
export function GuessAndTruth({ state, layout, rest }: GuessAndTruthProps) {
  const { guess, narrow, system } = state;
  if (guess === undefined) return null;
  const { marks, perStretch } = layout;
  const mark = (stretch: number, y: number) => ({
    x: rest + stretch * perStretch,
    y,
    d: `M${rest} ${y}H${rest + stretch * perStretch}`,
  });
  const say = (stretch: number) => formatQuantity(stretch, 'stretch', system);
  const { stretch: truth } = askedInputs(system);
  return (
    <g>
      <path class="axis" d={`M${rest} ${marks.guess - 6}V${marks.truth + 6}`} />
      <Mark
        {...mark(guess, marks.guess)}
        ink="hand"
        text={`${narrow ? '' : 'your '}guess ${say(guess)}`}
      />
      <Mark
        {...mark(truth, marks.truth)}
        ink="steel"
        text={`${narrow ? '' : 'the '}truth ${say(truth)}`}
      />
    </g>
  );
}
