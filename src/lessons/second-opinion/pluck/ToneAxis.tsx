/**
 * The first three tones of the span over a logarithmic axis of frequency, with what a phone hears little of, and the guess
 * beside the truth for the span that was asked about.
 * Units: SI in the state; drawing units otherwise.
 */
import { PHONE_HEARS_FROM } from '../phone.ts';
import type { State } from '../state.ts';
import { GuessAndTruth } from './GuessAndTruth.tsx';
import type { PluckLayout } from './layout.ts';
import { hertz, TONES, toneScale } from './tones.ts';

const TICKS = [20, 50, 100, 200, 500, 1000];

interface PartProps {
  readonly state: State;
  readonly layout: PluckLayout;
}

/** Axis and numbers, and the part that a phone hears badly. */
function Axis({ layout }: Pick<PartProps, 'layout'>) {
  const { left, right, y, tall } = layout.axis;
  const x = toneScale(layout);
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
            text-anchor={tick === TONES[0] ? 'start' : 'middle'}
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
  const x = toneScale(layout);
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
