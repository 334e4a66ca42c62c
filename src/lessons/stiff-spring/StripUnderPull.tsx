/**
 * A strip of steel between a fixed clamp and one that the reader pulls. It is as long as its gauge length is and always
 * as wide; its stretch is drawn larger, and the figure says how much.
 * Units: SI in the state; drawing units otherwise.
 */

import { ArrowHead, Dimension } from '../../figures/dimension.tsx';
import { Handle } from '../../figures/Handle.tsx';
import { Hatch } from '../../figures/Hatch.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import { stiffSpring } from './model.ts';
import type { State } from './state.ts';
import type { StripLayout } from './strip-layout.ts';

/** How many times larger than the length the stretch is drawn. */
export function exaggeration({ perStretch, perLength }: StripLayout): number {
  return perStretch / perLength;
}

const JAW = 54;

interface PartProps {
  readonly state: State;
  readonly layout: StripLayout;
}

function PullArrow({
  state,
  x,
  y,
}: {
  readonly state: State;
  readonly x: number;
  readonly y: number;
}) {
  const length = 14 + 36 * state.values.shareOfLimit;
  return (
    <g data-sym="force">
      <path class="steel-line" d={`M${x} ${y}H${x + length - 8}`} />
      <ArrowHead x={x + length} y={y} angle={0} ink="steel" size={11} />
    </g>
  );
}

function Clamp({
  x,
  y,
  height,
  fixed,
  id,
}: {
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly fixed: boolean;
  readonly id: string;
}) {
  const left = fixed ? x - 22 : x;
  return (
    <g>
      {fixed && <Hatch id={id} x={left} y={y - height / 2} width={22} height={height} />}
      <rect
        class={fixed ? 'outline' : 'outline paper-fill'}
        x={left}
        y={y - height / 2}
        width={22}
        height={height}
      />
    </g>
  );
}

/** The strip, its clamps, its dimensions and the handle. */
export function StripUnderPull({ state, layout }: PartProps) {
  const { values, system, idPrefix, guess, narrow } = state;
  const { left, perLength, thick, middle, perStretch } = layout;
  const { stretch, gaugeLength, leftStretch, released } = values;
  const rest = left + gaugeLength * perLength;
  const held = rest + stretch * perStretch;
  const end = released === 'letGo' ? rest + leftStretch * perStretch : held;
  const text = formatQuantity(stretch, 'stretch', system);
  return (
    <g>
      <path class="centre" d={`M${left - 34} ${middle}H${Math.max(end, held) + 40}`} />
      <rect
        class="outline paper-fill"
        x={left}
        y={middle - thick / 2}
        width={end - left}
        height={thick}
      />
      {released === 'letGo' && (
        <rect
          class="hidden-edge"
          x={left}
          y={middle - thick / 2}
          width={held - left}
          height={thick}
        />
      )}
      <path class="hidden-edge" d={`M${rest} ${middle - JAW / 2 - 4}V${middle + JAW / 2 + 4}`} />
      <Clamp x={left} y={middle} height={JAW} fixed id={`${idPrefix}-hatch`} />
      <Clamp x={end} y={middle} height={JAW} fixed={false} id="" />
      {released === 'held' && stretch > 0 && <PullArrow state={state} x={held + 44} y={middle} />}
      <Dimension
        from={rest}
        to={held}
        y={middle - JAW / 2 - 12}
        text={text}
        edge={middle - JAW / 2}
        ink="hand"
        id="stretch"
      />
      <Dimension
        from={left}
        to={rest}
        y={middle + JAW / 2 + 26}
        text={`${narrow ? '' : 'gauge length '}${formatQuantity(gaugeLength, 'length', system)}`}
        edge={middle + JAW / 2}
        ink="hand"
        id="gaugeLength"
      />
      {guess !== undefined && (
        <GuessMark
          x={rest + guess * perStretch}
          y={middle + JAW / 2}
          text={`your guess ${formatQuantity(guess, 'stretch', system)}`}
          isLate={rest + guess * perStretch > layout.width * 0.6}
        />
      )}
      {released === 'held' && (
        <Handle
          model={stiffSpring}
          state={state}
          x={held + 22}
          y={middle}
          input="stretch"
          label="Pull the strip’s end"
          drag="x"
          perUnit={1 / perStretch}
        />
      )}
    </g>
  );
}

interface GuessProps {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Whether the words would leave the sheet if they began at the mark. */
  readonly isLate: boolean;
}

/** Where the strip's end would be by the reader's guess, on the scale of the stretch. */
function GuessMark({ x, y, text, isLate }: GuessProps) {
  return (
    <g>
      <path class="hidden-edge" d={`M${x} ${y - 62}V${y + 26}`} />
      <text class="hand halo" x={x} y={y + 40} text-anchor={isLate ? 'end' : 'start'}>
        {text}
      </text>
    </g>
  );
}
