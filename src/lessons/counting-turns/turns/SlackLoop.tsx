/**
 * The band round its two wheels: hanging through, true to scale, while there is slack; then carrying the movable wheel
 * outwards as it stretches, drawn larger.
 * Units: drawing units.
 */

import { Dimension } from '../../../figures/dimension.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { CountingPartProps } from './layout.ts';

const LINE = 18; // drawing units from one line of words to the next

function Wheel({
  x,
  axis,
  radius,
  half,
}: Readonly<Record<'x' | 'axis' | 'radius' | 'half', number>>) {
  return (
    <g>
      <circle class="outline paper-fill" cx={x} cy={axis} r={radius - 2} />
      <circle class="thin" cx={x} cy={axis} r={radius * 0.86} />
      <circle class="outline" cx={x} cy={axis} r={half * 0.7} />
      <path class="centre" d={`M${x} ${axis - radius - 8}V${axis + radius + 8}`} />
    </g>
  );
}

function Words({ state, layout, places }: CountingPartProps) {
  const { bandTravel, slack, slackTravel } = state.values;
  const isSlack = slackTravel < slack;
  const say = (value: number) => formatQuantity(value, 'length', state.system, { digits: 3 });
  const name = isSlack ? 'slack left' : 'band gives';
  const amount = say(isSlack ? slack - slackTravel : bandTravel);
  const lines = layout.narrow ? [name, amount] : [`${name} ${amount}`];
  // Between the rims, or between a rim and the arm that stands inside the loop.
  const [, arm] = places.arms;
  const { fixed, moved, radius, mill } = places;
  const middle = mill.cylinder
    ? (fixed + radius + arm - places.lean - layout.half) / 2
    : (fixed + moved) / 2;
  return (
    <g data-sym={isSlack ? 'slack' : 'bandTravel'}>
      {lines.map((line, place) => (
        <text
          key={place}
          class={isSlack ? 'halo' : 'steel halo'}
          x={middle}
          y={layout.axis + 5 + LINE * (place - (lines.length - 1) / 2)}
          text-anchor="middle"
        >
          {line}
        </text>
      ))}
    </g>
  );
}

/** Wheels and band; how far apart the wheels stand before they move. */
export function SlackLoop(props: CountingPartProps) {
  const { state, layout, places } = props;
  const { axis, half, narrow } = layout;
  const { fixed, moved, unstretched, radius, sag, mill } = places;
  const middle = (fixed + moved) / 2;
  const [top, bottom] = [axis - radius, axis + radius];
  const arc = `A${radius} ${radius} 0 0 1`;
  const strand = (y: number, to: number) => `Q${middle} ${y + 2 * sag} ${to} ${y}`;
  return (
    <g>
      <Wheel x={fixed} axis={axis} radius={radius} half={half} />
      <Wheel x={moved} axis={axis} radius={radius} half={half} />
      <path class="hidden-edge" d={`M${unstretched} ${top}${arc} ${unstretched} ${bottom}`} />
      <path
        class="steel-line"
        d={`M${fixed} ${top}${strand(top, moved)}${arc} ${moved} ${bottom}${strand(bottom, fixed)}${arc} ${fixed} ${top}Z`}
      />
      <Words {...props} />
      {!narrow && (
        <Dimension
          from={fixed}
          to={unstretched}
          y={bottom + 42}
          edge={bottom + 10}
          text={formatQuantity(mill.centreDistance, 'longLength', state.system)}
        />
      )}
    </g>
  );
}
