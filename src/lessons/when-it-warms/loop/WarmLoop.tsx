/**
 * The mill with its growth drawn larger: where the frame holds the movable wheel, and where the band would reach by itself.
 * Units: SI in the state; drawing units otherwise.
 */
import { Loop } from '../../../figures/mill/Loop.tsx';
import { wheelAt } from '../../../figures/mill/layout.ts';
import { SlidingBlock } from '../../../figures/mill/SlidingBlock.tsx';
import type { State } from '../state.ts';
import type { LoopLayout } from './layout.ts';

interface WarmLoopProps {
  readonly state: State;
  readonly layout: LoopLayout;
}

/** Frame, wheels and band; dashed in the band's ink, its own reach. */
export function WarmLoop({ state, layout: { mill, words } }: WarmLoopProps) {
  const { bandGain, frameTakes, wheelsTake } = state.values;
  const wheel = wheelAt(mill, frameTakes);
  const reach = wheelAt(mill, bandGain - wheelsTake);
  const { axis, radius, beam, left, right } = mill;
  const longer = { ...mill, plate: mill.plate + wheel - right };
  return (
    <g>
      <Loop layout={longer} wheel={wheel} />
      <SlidingBlock x={wheel} axis={axis} beam={beam} />
      <path
        class="steel-line"
        stroke-dasharray="5 4"
        d={`M${left} ${axis - radius}H${reach}A${radius} ${radius} 0 0 1 ${reach} ${axis + radius}H${left}`}
      />
      {words && (
        <g>
          <path
            class="axis"
            d={`M${reach + radius * Math.SQRT1_2 + 4} ${axis - radius * Math.SQRT1_2 - 3}L${words.x - 6} ${words.y - 5}`}
          />
          <text class="steel" x={words.x} y={words.y}>
            the band by itself
          </text>
        </g>
      )}
    </g>
  );
}
