/**
 * The drive wheel with half of its rim wrapped, and the pull of its two strands as arrows: the rim must hold their
 * difference.
 * Units: SI in the state; drawing units otherwise.
 */
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { teller } from '../../../figures/teller.ts';
import { whatTensionBuys } from '../model.ts';
import type { State } from '../state.ts';
import type { GripLayout } from './layout.ts';

const say = teller(whatTensionBuys);

/** Wheel, strands, and what they pull. */
export function DriveWheel({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: GripLayout;
}) {
  const { x, y, radius, perForce } = layout.wheel;
  const { tight, slack } = state.values;
  const strands = [
    { name: 'slack', pull: slack, level: y - radius, words: y - radius - 8, sym: 'slack' },
    { name: 'tight', pull: tight, level: y + radius, words: y + radius + 18, sym: 'tight' },
  ] as const;
  return (
    <g>
      <circle class="thin" cx={x} cy={y} r={radius} />
      <path class="axis" d={`M${x - 10} ${y}H${x + 10}M${x} ${y - 10}V${y + 10}`} />
      <path
        class="outline"
        d={`M${x} ${y - radius}A${radius} ${radius} 0 0 1 ${x} ${y + radius}`}
      />
      {strands.map(({ name, pull, level, words, sym }) => (
        <g key={name} data-sym={sym}>
          <ForceArrow x={x} y={level} length={-pull * perForce} ink="steel" />
          <text class="steel" x={x - 4} y={words} text-anchor="end">
            {name} {say(state, sym)}
          </text>
        </g>
      ))}
    </g>
  );
}
