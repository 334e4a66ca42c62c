/**
 * The stiffness of a frame on a scale of equal ratios: what turns and stretch say, from the least to the most that it
 * may be; open to the right where the readings cannot tell it from a rigid one.
 * Units: SI in the state; drawing units otherwise.
 */

import { LevelTicks } from '../../../figures/axis-ticks.tsx';
import { ArrowHead } from '../../../figures/dimension.tsx';
import { linearScale, type Scale, type Tick } from '../../../figures/scale.ts';
import { formatNumber } from '../../../units/format-number.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { unitLabel } from '../../../units/label.ts';
import { toSi } from '../../../units/si-value.ts';
import type { FramePlotLayout } from '../frame/layout.ts';
import type { State } from '../state.ts';

const LEAST = 1.6e6;
const MOST = 60e6;
const TICKS = {
  metric: [2, 5, 10, 20, 50],
  us: [10_000, 20_000, 50_000, 100_000, 300_000],
} as const;

interface RuleProps {
  readonly state: State;
  readonly layout: FramePlotLayout;
}

/** Equal ratios to equal lengths; what lies off the rule stays at its end. */
function ratioScale({ rule }: FramePlotLayout): Scale {
  const straight = linearScale([Math.log(LEAST), Math.log(MOST)], [rule.left, rule.right]);
  return (value) => straight(Math.log(Math.min(MOST, Math.max(LEAST, value))));
}

function axisTicks({ system }: State): readonly Tick[] {
  return TICKS[system].map((amount) => ({
    value: toSi(amount, 'stiffness', system),
    text: formatNumber(amount, { significant: 6, trim: true }),
  }));
}

function Axis({ state, layout, x }: RuleProps & { readonly x: Scale }) {
  const { rule, narrow } = layout;
  return (
    <g>
      <text class="note" x={rule.right} y={rule.y + 40} text-anchor="end">
        {narrow ? 'the frame' : 'stiffness of the frame'}, {unitLabel('stiffness', state.system)}
      </text>
      <path class="axis" d={`M${rule.left} ${rule.y}H${rule.right}`} />
      <LevelTicks ticks={axisTicks(state)} x={x} y={rule.y} drop={20} />
    </g>
  );
}

/** What the readings say: a range round a value, only a least value, or nothing. */
export function StiffnessRule({ state, layout }: RuleProps) {
  const x = ratioScale(layout);
  const { rule } = layout;
  const { resolved, frameFound, frameLow, frameHigh } = state.values;
  const y = rule.y - 14;
  const from = x(frameLow);
  const to = resolved === 1 ? x(frameHigh) : rule.right;
  const isOpen = resolved !== 1 || frameHigh > MOST;
  const place = resolved === 1 ? x(frameFound) : from;
  const found = formatQuantity(resolved === 1 ? frameFound : frameLow, 'stiffness', state.system, {
    digits: 2,
  });
  return (
    <g data-sym="frameFound">
      <Axis state={state} layout={layout} x={x} />
      {frameLow > 0 && (
        <>
          <path
            class="outline"
            d={`M${from} ${y - 7}v14M${from} ${y}H${to}${isOpen ? '' : 'm0 -7v14'}`}
          />
          {frameLow < LEAST && <ArrowHead x={rule.left - 6} y={y} angle={180} size={11} />}
          {isOpen && <ArrowHead x={rule.right + 6} y={y} angle={0} size={11} />}
          {resolved === 1 && frameFound >= LEAST && (
            <circle class="ink-fill" cx={place} cy={y} r={5} />
          )}
          <text
            class="halo"
            x={place}
            y={y - 12}
            text-anchor={place > (rule.left + rule.right) / 2 ? 'end' : 'start'}
          >
            {resolved === 1 ? found : `more than ${found}`}
          </text>
        </>
      )}
    </g>
  );
}
