/**
 * The work of the turns as a ribbon: as wide as the whole where the hand puts it in, then parted into what band and
 * frame keep and what turns to heat; each part's width is its share, and the widths add up to the whole.
 * Units: SI in the values; drawing units.
 */
import {
  energyText,
  flowPath,
  percentText,
  type RibbonPart,
  ribbonEnds,
  ribbonParts,
  wholeTop,
  wholeWidth,
} from './ribbon-parts.ts';
import type { State } from './state.ts';
import type { TurnLayout } from './turn-layout.ts';

interface RibbonProps {
  readonly state: State;
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
  const energy = energyText(state.values[part.name], state.system);
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
        {`${part.words} ${energy}, ${percentText(share)}`}
      </text>
    </g>
  );
}

/** A bracket as long as the guessed share, against the whole from its top. */
function GuessBracket({
  guess,
  top,
  whole,
  layout: { ribbon },
}: {
  guess: number;
  whole: number;
  top: number;
  layout: TurnLayout;
}) {
  const x = ribbon.left - 8;
  const bottom = top + guess * whole;
  return (
    <g>
      <path class="hand-line" d={`M${x + 5} ${top}H${x}V${bottom}H${x + 5}`} />
      <text class="hand" x={x - 4} y={(top + bottom) / 2 + 5} text-anchor="end">
        your guess
      </text>
    </g>
  );
}

/** What stands in the ribbon's place before any turn. */
function NoWork({ top, layout }: { readonly top: number; readonly layout: TurnLayout }) {
  const { from } = ribbonEnds(layout);
  const { left, label, whole } = layout.ribbon;
  return (
    <g>
      <path class="hidden-edge" d={`M${left} ${top}H${from}V${top + whole}H${left}Z`} />
      <text class="note" x={label} y={top + whole / 2 + 5}>
        no turn yet: nothing to share
      </text>
    </g>
  );
}

/** The parts with the whole that they leave, and the reader's guess beside it. */
function Shares({
  state,
  layout,
  parts,
  top,
}: RibbonProps & { readonly parts: readonly RibbonPart[]; readonly top: number }) {
  const { left } = layout.ribbon;
  const whole = wholeWidth(state, layout);
  return (
    <g>
      {parts.map((placed) => (
        <Flow key={placed.part.name} placed={placed} top={top} state={state} layout={layout} />
      ))}
      <rect
        class="hand-line hand-wash"
        x={left}
        y={top}
        width={ribbonEnds(layout).from - left}
        height={whole}
      />
      {state.guess !== undefined && (
        <GuessBracket guess={state.guess} top={top} whole={whole} layout={layout} />
      )}
    </g>
  );
}

/** The work of the hand and what became of it; an empty outline before any turn. */
export function WorkRibbon({ state, layout }: RibbonProps) {
  const { ribbon, narrow } = layout;
  const work = state.values.work;
  const parts = ribbonParts(state, layout);
  const top = wholeTop(parts, work > 0 ? wholeWidth(state, layout) : ribbon.whole, layout);
  return (
    <g>
      {!narrow && <path class="outline" d={`M${ribbon.edge} ${layout.list.top}H${layout.width}`} />}
      {work > 0 ? (
        <Shares state={state} layout={layout} parts={parts} top={top} />
      ) : (
        <NoWork top={top} layout={layout} />
      )}
      <text class="hand" x={ribbon.edge} y={ribbon.top - 4} data-sym="work">
        work of the hand {energyText(work, state.system)}
      </text>
    </g>
  );
}
