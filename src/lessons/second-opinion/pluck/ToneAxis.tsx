/**
 * The first three tones of the span over a logarithmic axis of frequency, with what a phone hears little of, and the guess
 * beside the truth for the span that was asked about.
 * Units: SI in the state; drawing units otherwise.
 */
import { linearScale, type Scale } from '../../../figures/scale.ts';
import { evaluated, inputsAt } from '../../../models/define-model.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { asked, secondOpinion } from '../model.ts';
import { PHONE_HEARS_FROM } from '../phone.ts';
import type { State } from '../state.ts';
import type { PluckLayout } from './layout.ts';

const ENDS = [20, 2000] as const; // Hz
const TICKS = [20, 50, 100, 200, 500, 1000];

interface PartProps {
  readonly state: State;
  readonly layout: PluckLayout;
}

function scaleOf({ axis }: PluckLayout): Scale {
  const across = linearScale([Math.log(ENDS[0]), Math.log(ENDS[1])], [axis.left, axis.right]);
  return (frequency) => across(Math.log(frequency));
}

const hertz = (frequency: number, { system }: State) =>
  formatQuantity(frequency, 'frequency', system);

/** Axis and numbers, and the part that a phone hears badly. */
function Axis({ layout }: Pick<PartProps, 'layout'>) {
  const { left, right, y, tall } = layout.axis;
  const x = scaleOf(layout);
  return (
    <g>
      <rect
        class="shade-fill"
        x={left}
        y={y - tall}
        width={x(PHONE_HEARS_FROM) - left}
        height={tall}
      />
      <text class="note" x={left} y={y + 38}>
        shaded: faint on a phone
      </text>
      <path class="axis" d={`M${left} ${y}H${right}`} />
      {TICKS.map((tick) => (
        <g key={tick}>
          <path class="axis" d={`M${x(tick)} ${y}v5`} />
          <text
            class="note"
            x={x(tick)}
            y={y + 21}
            text-anchor={tick === ENDS[0] ? 'start' : 'middle'}
          >
            {tick}
          </text>
        </g>
      ))}
      <text class="note" x={right} y={y + 38} text-anchor="end">
        Hz
      </text>
    </g>
  );
}

/** The first three tones, the first the tallest. */
function Tones({ state, layout }: PartProps) {
  const { y, tall } = layout.axis;
  const x = scaleOf(layout);
  const { pitch, secondTone, thirdTone } = state.values;
  return (
    <g>
      {[pitch, secondTone, thirdTone].map((tone, place) => {
        const top = y - tall * (place === 0 ? 1 : 0.55);
        return (
          <g key={place} transform={`translate(${x(tone)} 0)`}>
            <path class="steel-line" d={`M0 ${y}V${top}`} />
            <text
              class="steel halo"
              y={top - 6}
              text-anchor="middle"
              data-sym={place === 0 ? 'pitch' : undefined}
            >
              {place === 0 ? hertz(tone, state) : place + 1}
            </text>
          </g>
        );
      })}
    </g>
  );
}

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

function GuessAndTruth({ state, layout }: PartProps) {
  const { guess, system } = state;
  if (guess === undefined) return null;
  const x = scaleOf(layout);
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

/** Axis, tones, guess. */
export function ToneAxis(props: PartProps) {
  return (
    <g>
      <Axis layout={props.layout} />
      <GuessAndTruth {...props} />
      <Tones {...props} />
    </g>
  );
}
