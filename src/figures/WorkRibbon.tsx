/**
 * The work of the turns as a ribbon: as wide as the whole where the hand puts it in, then parted into what band and
 * frame keep and what turns to heat; each part's width is its share, and the widths add up to the whole.
 * Units: SI in the values; drawing units.
 */
import { formatQuantity } from '../units/format-quantity.ts';
import { ArrowHead } from './dimension.tsx';
import type { FigureState } from './figure.ts';
import type { TurnLayout } from './turn-layout.ts';

const PARTS = [
  { name: 'bandWork', words: 'kept in the band', short: 'kept in band', kept: true, ink: 'steel' },
  { name: 'frameWork', words: 'kept in the frame', short: 'kept in frame', kept: true, ink: 'ink' },
  {
    name: 'threadWork',
    words: 'heat in the thread',
    short: 'heat, thread',
    kept: false,
    ink: 'ink',
  },
  {
    name: 'collarWork',
    words: 'heat in the bearing',
    short: 'heat, bearing',
    kept: false,
    ink: 'ink',
  },
  { name: 'dragWork', words: 'heat of the drag', short: 'heat, drag', kept: false, ink: 'ink' },
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

function Flow({
  placed,
  top,
  layout: { ribbon, narrow },
  state,
}: RibbonProps & { placed: RibbonPart; top: number }) {
  const { part, share, start, end, thickness } = placed;
  const from = ribbon.left + (narrow ? 16 : 30);
  const to = ribbon.label - (narrow ? 18 : 24);
  const bend = (from + to) / 2;
  const upper = top + start;
  const side = (y1: number, y2: number) => `M${from} ${y1}C${bend} ${y1} ${bend} ${y2} ${to} ${y2}`;
  const back = `L${to} ${end + thickness}C${bend} ${end + thickness} ${bend} ${upper + thickness} ${from} ${upper + thickness}Z`;
  const line = part.ink === 'steel' ? 'steel-line' : 'thin';
  const middle = end + thickness / 2;
  const energy = formatQuantity(state.values[part.name] ?? 0, 'energy', state.system);
  const percent = formatQuantity(share, 'percent', state.system, { digits: 2 });
  return (
    <g data-sym={part.name}>
      <path
        class={part.ink === 'steel' ? 'steel-wash' : 'shade-fill'}
        d={side(upper, end) + back}
      />
      <path class={line} d={side(upper, end) + side(upper + thickness, end + thickness)} />
      {part.kept ? (
        <path
          class={part.ink === 'steel' ? 'steel-line' : 'outline'}
          d={`M${to} ${end - 2}v${thickness + 4}`}
        />
      ) : (
        <ArrowHead x={to + 12} y={middle} angle={0} size={10} />
      )}
      <text class={part.ink} x={ribbon.label} y={middle + 5}>
        {`${narrow ? part.short : part.words} ${energy}, ${percent}`}
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
      <text class="note" x={x} y={top + ribbon.whole + 18}>
        your guess for the band
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
      {parts.map((placed) => (
        <Flow key={placed.part.name} placed={placed} top={top} state={state} layout={layout} />
      ))}
      <g data-sym="work">
        <rect
          class="hand-line hand-wash"
          x={ribbon.left}
          y={top}
          width={narrow ? 16 : 30}
          height={ribbon.whole}
        />
        <text class="hand" x={ribbon.left} y={top - 10}>
          {`${narrow ? '' : 'work of the hand '}${whole}`}
        </text>
      </g>
      {state.guess !== undefined && <GuessBracket guess={state.guess} top={top} layout={layout} />}
    </g>
  );
}
