/**
 * A strip of steel between a fixed clamp and one that the reader pulls. It is as long as its gauge length is and always
 * as wide; its stretch is drawn larger, and the figure says how much.
 * Units: SI in the state; drawing units otherwise.
 */

import { ArrowHead, Dimension } from '../../figures/dimension.tsx';
import { Handle } from '../../figures/Handle.tsx';
import { Hatch } from '../../figures/Hatch.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import { GuessAndTruth } from './GuessAndTruth.tsx';
import { stiffSpring } from './model.ts';
import type { State } from './state.ts';
import type { StripLayout } from './strip-layout.ts';

/** How many times larger than the length the stretch is drawn. */
export function exaggeration({ perStretch, perLength }: StripLayout): number {
  return perStretch / perLength;
}

const JAW = 54;
const JAW_DEPTH = 22;

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
  const left = fixed ? x - JAW_DEPTH : x;
  return (
    <g>
      {fixed && <Hatch id={id} x={left} y={y - height / 2} width={JAW_DEPTH} height={height} />}
      <rect
        class={fixed ? 'outline' : 'outline paper-fill'}
        x={left}
        y={y - height / 2}
        width={JAW_DEPTH}
        height={height}
      />
    </g>
  );
}

/** The strip, its clamps, its dimensions and the handle. */
export function StripUnderPull({ state, layout }: PartProps) {
  const { values, system, idPrefix, narrow } = state;
  const { left, perLength, thick, middle, perStretch } = layout;
  const { stretch, gaugeLength, leftStretch, released } = values;
  const rest = left + gaugeLength * perLength;
  const held = rest + stretch * perStretch;
  const end = released === 'letGo' ? rest + leftStretch * perStretch : held;
  const reach = Math.max(end + JAW_DEPTH, held) + 8;
  return (
    <g>
      <path
        class="centre"
        d={`M${left - 34} ${middle}H${released === 'held' ? held + 40 : reach}`}
      />
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
        text={formatQuantity(stretch, 'stretch', system)}
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
      {released === 'letGo' && leftStretch > 0 && (
        <text class="steel halo" x={reach + 8} y={middle + 5} data-sym="leftStretch">
          stays {formatQuantity(leftStretch, 'stretch', system)}
        </text>
      )}
      <GuessAndTruth state={state} layout={layout} rest={rest} />
      {released === 'held' && (
        <Handle
          model={stiffSpring}
          state={state}
          x={held + JAW_DEPTH}
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
