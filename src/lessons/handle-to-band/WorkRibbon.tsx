/**
 * The work of the turns as a ribbon, parted into what band and frame keep and what turns to heat; under its foot, on one
 * scale from nothing to all of the work, the band's share and the share that the reader guessed.
 * Units: SI in the values; drawing units.
 */
import { teller } from '../../figures/teller.ts';
import { handleToBand } from './model.ts';
import { flowPath, percentText, type RibbonPart, ribbonParts, wholeWidth } from './ribbon-parts.ts';
import type { State } from './state.ts';
import type { RibbonPlace } from './turn-layout.ts';

const tell = teller(handleToBand);

interface RibbonProps {
  readonly state: State;
  readonly place: RibbonPlace;
}

/** A share of the foot's width between two ticks on the line of its words. */
function bracket({ left, width }: RibbonPlace, line: number, share: number): string {
  const y = line - 5;
  return `M${left} ${y - 5}V${y + 5}M${left} ${y}H${left + share * width}M${left + share * width} ${y - 5}V${y + 5}`;
}

/** The reader's guess under the truth. */
function Guessed({ guess, place }: { readonly guess: number; readonly place: RibbonPlace }) {
  return (
    <g>
      <text class="hand" x={0} y={place.guess}>
        your guess {percentText(guess)}
      </text>
      <path class="hand-line" stroke-dasharray="6 4" d={bracket(place, place.guess, guess)} />
    </g>
  );
}

/** What stands in the ribbon's place before any turn. */
function NoWork({ place: { left, width, spread, foot, names } }: Pick<RibbonProps, 'place'>) {
  return (
    <g>
      <path class="hidden-edge" d={`M${left} ${spread}H${left + width}V${foot}H${left}Z`} />
      <text class="note" x={left} y={names}>
        no turn yet: nothing to share
      </text>
    </g>
  );
}

interface PartsProps extends RibbonProps {
  readonly parts: readonly RibbonPart[];
}

/** Names under the foot: the frame's where its part begins, the heat's at the end. */
function Names({ parts, place }: Omit<PartsProps, 'state'>) {
  const { left, width, names } = place;
  const [band, frame, heat] = parts;
  if (!band || !frame || !heat) return null;
  const say = ({ words, share }: RibbonPart) => `${words} ${percentText(share)}`;
  return (
    <g>
      <text class="steel" x={0} y={names} data-sym="bandShare">
        {say(band)}
      </text>
      <path class="steel-line" d={bracket(place, names, band.share)} data-sym="bandShare" />
      <text x={left + frame.before * width + 8} y={names} data-sym="frameWork">
        {say(frame)}
      </text>
      <text x={left + width} y={names} text-anchor="end" data-sym="heat">
        {say(heat)}
      </text>
    </g>
  );
}

/** The parts from the hand to the foot, under the line of the hand. */
function Flows({ state, place, parts }: PartsProps) {
  const whole = wholeWidth(state, place);
  return (
    <g>
      {parts.map((part) => (
        <path
          key={part.name}
          class={part.name === 'bandWork' ? 'steel-line steel-wash' : 'thin shade-fill'}
          d={flowPath(part, whole, place)}
          data-sym={part.name}
        />
      ))}
      <path class="hand-line" d={`M${place.left} ${place.top}h${whole}`} data-sym="work" />
    </g>
  );
}

/** The work of the hand and what became of it; an empty outline before any turn. */
export function WorkRibbon({ state, place }: RibbonProps) {
  const parts = ribbonParts(state);
  return (
    <g>
      <text class="hand" x={0} y={place.top + 6} data-sym="work">
        your work {tell(state, 'work')}
      </text>
      {parts.length > 0 ? (
        <g>
          <Flows state={state} place={place} parts={parts} />
          <Names parts={parts} place={place} />
        </g>
      ) : (
        <NoWork place={place} />
      )}
      {state.guess !== undefined && <Guessed guess={state.guess} place={place} />}
    </g>
  );
}
