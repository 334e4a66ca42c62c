/**
 * The band round its two wheels with a weight on the upper strand. Wheels and strand are true to scale; the movement is
 * drawn larger, and the figure says how many times. The weight's square grows with it.
 * Units: SI in the state; drawing units otherwise.
 */
import { Dimension } from '../../../figures/dimension.tsx';
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { teller } from '../../../figures/teller.ts';
import { OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';
import { secondOpinion } from '../model.ts';
import type { State } from '../state.ts';
import type { PressLayout } from './layout.ts';

const say = teller(secondOpinion);

interface PartProps {
  readonly state: State;
  readonly layout: PressLayout;
}

/** Where the strand is, and where its middle has gone. */
function places({ values }: State, { left, level, perLength, times }: PressLayout) {
  const radius = (OTTERSLEIGH.wheelDiameter / 2) * perLength;
  const right = left + OTTERSLEIGH.centreDistance * perLength;
  const top = level - radius;
  const moved = values.deflection * perLength * times;
  return { radius, right, top, middle: (left + right) / 2, moved, low: top + moved };
}

function Wheels({ state, layout }: PartProps) {
  const { left, level } = layout;
  const { radius, right } = places(state, layout);
  return (
    <g>
      {[left, right].map((x) => (
        <g key={x}>
          <circle class="thin" cx={x} cy={level} r={radius} />
          <path
            class="centre"
            d={`M${x - 12} ${level}H${x + 12}M${x} ${level - 12}V${level + 12}`}
          />
        </g>
      ))}
      <path
        class="outline"
        d={`M${left} ${level + radius}A${radius} ${radius} 0 0 1 ${left} ${level - radius}M${left} ${level + radius}H${right}A${radius} ${radius} 0 0 0 ${right} ${level - radius}`}
      />
    </g>
  );
}

/** The weight on its cord. */
function Weight({ state, layout }: PartProps) {
  const { middle, low } = places(state, layout);
  const side = layout.side * Math.sqrt(state.values.weight);
  const top = low + layout.cord;
  return (
    <g data-sym="weight">
      <path class="hand-line" d={`M${middle} ${low}V${top}`} />
      <rect class="outline hand-wash" x={middle - side / 2} y={top} width={side} height={side} />
      <text class="hand" x={middle + side / 2 + 10} y={top + side / 2 + 5}>
        {say(state, 'weight')}
      </text>
    </g>
  );
}

/** How far the middle went, beside the cord. */
function Moved({ state, layout }: PartProps) {
  const { middle, top, low } = places(state, layout);
  const at = middle - (state.narrow ? 46 : 110);
  return (
    <g data-sym="deflection">
      <path class="axis" d={`M${at - 6} ${low}H${middle}`} />
      <path class="hand-line" d={`M${at} ${top}V${low}`} />
      <text class="hand halo" x={at} y={low + 20} text-anchor="middle">
        {say(state, 'deflection')}
      </text>
    </g>
  );
}

/** The strand that pulls back at both ends, with its pull and its stress over it. */
function Strand({ state, layout }: PartProps) {
  const { left } = layout;
  const { right, top, middle, low } = places(state, layout);
  return (
    <g>
      <path class="construction" d={`M${left} ${top}H${right}`} />
      <path
        class="steel-line"
        d={`M${left} ${top}L${middle} ${low}L${right} ${top}`}
        data-sym="pressPull"
      />
      <text class="steel" x={middle} y={layout.words} text-anchor="middle" data-sym="pressStress">
        {state.narrow ? '' : 'each side pulls with '}
        {say(state, 'pressPull')}
      </text>
    </g>
  );
}

/** The whole drawing. */
export function PressedStrand(props: PartProps) {
  const { state, layout } = props;
  const { right, top, middle, low } = places(state, layout);
  const pull = state.values.pressPull * layout.perForce;
  return (
    <g>
      <Wheels {...props} />
      <Strand {...props} />
      <ForceArrow x={middle - 20} y={top - 12} length={-pull} ink="steel" />
      <ForceArrow x={middle + 20} y={top - 12} length={pull} ink="steel" />
      <Moved {...props} />
      <Weight {...props} />
      <Dimension
        from={layout.left}
        to={right}
        y={layout.distance}
        edge={layout.level + 16}
        text={say(state, 'strandSpan')}
      />
      <Handle
        model={secondOpinion}
        state={state}
        x={middle}
        y={low}
        input="deflection"
        label="Move the middle of the strand"
        drag="y"
        perUnit={1 / (layout.perLength * layout.times)}
      />
    </g>
  );
}
