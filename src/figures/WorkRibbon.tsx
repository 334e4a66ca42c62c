/**
 * The work of the turns as a ribbon: as wide as the whole where the hand puts it in, then parted into what band and
 * frame keep and what turns to heat; each part's width is its share, and the widths add up to the whole.
 * Units: SI in the values; drawing units.
 */
import { formatQuantity } from '../units/format-quantity.ts';
import type { FigureState } from './figure.ts';
import { flowPath, type RibbonPart, ribbonEnds, ribbonParts, wholeTop } from './ribbon-parts.ts';
import type { TurnLayout } from './turn-layout.ts';

interface RibbonProps {
  readonly state: FigureState;
  readonly layout: TurnLayout;
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
