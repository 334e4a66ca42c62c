/**
 * The work of the turns as a ribbon: as wide as the whole where the hand puts it in, then parted into what band and
 * frame keep and what turns to heat; each part's width is its share, and the widths add up to the whole.
 * Units: SI in the values; drawing units.
 */
import { formatQuantity } from '../units/format-quantity.ts';
import type { FigureState } from './figure.ts';
import type { TurnLayout } from './turn-layout.ts';

const PARTS = [
  { name: 'bandWork', words: 'kept in band', kept: true, ink: 'steel' },
  { name: 'frameWork', words: 'kept in frame', kept: true, ink: 'ink' },
  { name: 'threadWork', words: 'heat in thread', kept: false, ink: 'ink' },
  { name: 'collarWork', words: 'heat in bearing', kept: false, ink: 'ink' },
  { name: 'dragWork', words: 'heat of drag', kept: false, ink: 'ink' },
] as const;

type Part = (typeof PARTS)[number];

/** One part's place: where it leaves the whole, and where it ends. */
export interface RibbonPart {
  readonly part: Part;
  readonly share: number;
  readonly start: number;
  readonly end: number;
  readonly thickness: number;
}

const LEAST_ROW = 18;
const GAP = 4;

/** Places of all parts from the top down; the ends are parted so that every label has its row. */
export function ribbonParts(
  { values }: FigureState,
  { ribbon }: TurnLayout,
): readonly RibbonPart[] {
  const whole = values['work'] ?? 0;
  let start = 0;
  let end = ribbon.top;
  return PARTS.map((part) => {
    // Before any turn the shares are their limits: the drag takes all.
    const rest = part.name === 'dragWork' ? 1 : 0;
    const share = whole > 0 ? (values[part.name] ?? 0) / whole : rest;
    const thickness = share * ribbon.whole;
    const row = Math.max(thickness, LEAST_ROW);
    const placed = { part, share, start, end: end + (row - thickness) / 2, thickness };
    start += thickness;
    end += row + GAP;
    return placed;
  });
}

/** Where the parts leave the whole, and where they end. */
function ribbonEnds({ ribbon, narrow }: TurnLayout) {
  return narrow
    ? { from: ribbon.left + 16, to: ribbon.label - 18 }
    : { from: ribbon.left + 30, to: ribbon.label - 24 };
}

/** The ribbon's top where the parts are still one, in the middle of where they end. */
function wholeTop(parts: readonly RibbonPart[], { ribbon }: TurnLayout): number {
  const last = parts.at(-1);
  const bottom = last ? last.end + (last.thickness + Math.max(last.thickness, LEAST_ROW)) / 2 : 0;
  return (ribbon.top + bottom - ribbon.whole) / 2;
}

interface RibbonProps {
  readonly state: FigureState;
  readonly layout: TurnLayout;
}

const TIP = 10;

/** Outline of a part: from the whole to its own end and back, with a point where it leaves as heat. */
function flowPath({ start, end, thickness, part }: RibbonPart, top: number, layout: TurnLayout) {
  const { from, to } = ribbonEnds(layout);
  const bend = (from + to) / 2;
  const [upper, lower] = [top + start, end + thickness];
  const tip = part.kept ? '' : `L${to + TIP} ${end + thickness / 2}`;
  return `M${from} ${upper}C${bend} ${upper} ${bend} ${end} ${to} ${end}${tip}L${to} ${lower}C${bend} ${lower} ${bend} ${upper + thickness} ${from} ${upper + thickness}`;
}

function Flow({
  placed,
  top,
  layout,
  state,
}: RibbonProps & { readonly placed: RibbonPart; readonly top: number }) {
  const { part, share, end, thickness } = placed;
  const { ribbon } = layout;
  const isBand = part.ink === 'steel';
  const path = flowPath(placed, top, layout);
  // A small part is shown no finer than the whole.
  const digits = share < 0.01 ? 1 : share < 0.1 ? 2 : 3;
  const energy = formatQuantity(state.values[part.name] ?? 0, 'energy', state.system, { digits });
  const percent = formatQuantity(share, 'percent', state.system, { digits: 2 });
  return (
    <g data-sym={part.name}>
      <path class={isBand ? 'steel-wash' : 'shade-fill'} d={path} />
      <path class={isBand ? 'steel-line' : 'thin'} d={path} />
      {part.kept && (
        <path
          class={isBand ? 'steel-line' : 'outline'}
          d={`M${ribbonEnds(layout).to} ${end - 2}v${thickness + 4}`}
        />
      )}
      <text class={part.ink} x={ribbon.label} y={end + thickness / 2 + 5}>
        {`${part.words} ${energy}, ${percent}`}
      </text>
    </g>
  );
}

/** A bracket as long as the guessed share, against the whole from its top. */
function GuessBracket({
  guess,
  top,
  layout: { ribbon },
}: {
  guess: number;
  top: number;
  layout: TurnLayout;
}) {
  const x = ribbon.left - 8;
  const bottom = top + guess * ribbon.whole;
  return (
    <g>
      <path class="thin" d={`M${x + 5} ${top}H${x}V${bottom}H${x + 5}`} />
      <text class="note" x={x - 4} y={(top + bottom) / 2 + 5} text-anchor="end">
        your guess
      </text>
    </g>
  );
}

/** The whole, its parts, and the reader's guess beside it. */
export function WorkRibbon({ state, layout }: RibbonProps) {
  const { ribbon, narrow } = layout;
  const parts = ribbonParts(state, layout);
  const top = wholeTop(parts, layout);
  const whole = formatQuantity(state.values['work'] ?? 0, 'energy', state.system);
  return (
    <g>
      {!narrow && <path class="outline" d={`M${ribbon.edge} ${layout.list.top}H${layout.width}`} />}
      {parts.map((placed) => (
        <Flow key={placed.part.name} placed={placed} top={top} state={state} layout={layout} />
      ))}
      <g data-sym="work">
        <rect
          class="hand-line hand-wash"
          x={ribbon.left}
          y={top}
          width={ribbonEnds(layout).from - ribbon.left}
          height={ribbon.whole}
        />
        <text class="hand" x={ribbon.edge} y={ribbon.top - 4}>
          work of the hand {whole}
        </text>
      </g>
      {state.guess !== undefined && <GuessBracket guess={state.guess} top={top} layout={layout} />}
    </g>
  );
}
