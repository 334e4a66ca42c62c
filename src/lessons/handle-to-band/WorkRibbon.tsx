/**
 * The work of the turns as a ribbon, parted into what band and frame keep and what turns to heat; under it the same
 * drawn out, and on that one scale, from nothing to all of the work, the band's share and the share that was guessed.
 * Units: SI in the values; drawing units.
 */
import { teller } from '../../figures/teller.ts';
import { handleToBand } from './model.ts';
import { partPath, percentText, type RibbonPart, ribbonParts, wholeWidth } from './ribbon-parts.ts';
import type { State } from './state.ts';
import type { RibbonPlace } from './turn-layout.ts';

const tell = teller(handleToBand);

interface RibbonProps {
  readonly state: State;
  readonly place: RibbonPlace;
}

const TICK = 3.5;

/** A share of all the work between two ticks, on the line of its words. */
function bracket({ left, width }: RibbonPlace, line: number, share: number): string {
  const [y, end] = [line - 5, left + share * width];
  const tick = (x: number) => `M${x} ${y - TICK}v${2 * TICK}`;
  return `${tick(left)}M${left} ${y}H${end}${tick(end)}`;
}

/** The reader's guess under the truth. */
function Guessed({ guess, place }: { readonly guess: number; readonly place: RibbonPlace }) {
  return (
    <g>
      <text class="hand" x={0} y={place.guess}>
        your guess {percentText(guess)}
      </text>
      <path class="hand-line" stroke-dasharray="8 4" d={bracket(place, place.guess, guess)} />
    </g>
  );
}

/** What stands in the ribbon's place before any turn. */
function NoWork({ place: { left, width, drawnOut, names } }: Pick<RibbonProps, 'place'>) {
  const [top, foot] = drawnOut;
  return (
    <g>
      <path class="hidden-edge" d={`M${left} ${top}h${width}V${foot}h${-width}Z`} />
      <text class="note" x={left} y={names}>
        no turn yet: nothing to share
      </text>
    </g>
  );
}

interface PartsProps extends RibbonProps {
  readonly parts: readonly RibbonPart[];
}

/** Names under the ribbon drawn out: the frame's where its part begins, the heat's at the end. */
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

const FILLS = {
  bandWork: 'steel-line steel-wash',
  frameWork: 'thin paper-fill',
  heat: 'thin shade-fill',
};

/** The parts, and the lines along which the ribbon is drawn out. */
function Parts({ state, place, parts }: PartsProps) {
  const { left, width, ribbon, drawnOut } = place;
  const whole = wholeWidth(state, place);
  const between = `M${left} ${ribbon[1]}V${drawnOut[0]}M${left + whole} ${ribbon[1]}L${left + width} ${drawnOut[0]}`;
  return (
    <g>
      <path class="construction" d={between} />
      {[...parts].reverse().map((part) => (
        <path
          key={part.name}
          class={FILLS[part.name]}
          d={partPath(part, whole, place)}
          data-sym={part.name}
        />
      ))}
      <path class="hand-line" d={`M${left} ${ribbon[0]}h${whole}`} data-sym="work" />
    </g>
  );
}

/** The work of the hand and what became of it; an empty outline before any turn. */
export function WorkRibbon({ state, place }: RibbonProps) {
  const parts = ribbonParts(state);
  return (
    <g>
      <text class="hand" x={0} y={place.work} data-sym="work">
        {`${state.narrow ? '' : 'your '}work ${tell(state, 'work')}`}
      </text>
      {parts.length > 0 ? (
        <g>
          <Parts state={state} place={place} parts={parts} />
          <Names parts={parts} place={place} />
        </g>
      ) : (
        <NoWork place={place} />
      )}
      {state.guess !== undefined && <Guessed guess={state.guess} place={place} />}
    </g>
  );
}
