/**
 * What band and frame of the chosen mill give, above and below the beam, and how far apart the axles are.
 * Units: SI in the state; drawing units otherwise.
 */
import { Dimension } from '../../../figures/dimension.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { CountingPartProps } from './layout.ts';

/** Between the rims, or between the fixed wheel's rim and the cylinder that stands inside the loop. */
function middleOf({ fixed, moved, radius, plate, mill }: CountingPartProps['places']): number {
  return mill.cylinder ? (fixed + radius + plate) / 2 : (fixed + moved) / 2;
}

/** The words, and on a wide page the dimension from axle to axle. */
export function LoopWords({ state, layout, places }: CountingPartProps) {
  const { bandTravel, frameTravel, slack, slackTravel } = state.values;
  const { fixed, moved, axis, beam, radius, apart } = places;
  const isSlack = slackTravel < slack;
  const say = (value: number) => formatQuantity(value, 'length', state.system, { digits: 3 });
  const x = middleOf(places);
  const room = layout.narrow ? 5 : 14;
  const bottom = axis + radius;
  const gives = layout.narrow ? '' : 'gives '; // a phone has no room for it between the rims
  const slackName = layout.narrow ? 'slack' : 'slack left';
  return (
    <g>
      <text
        class={isSlack ? 'halo' : 'steel halo'}
        x={x}
        y={axis - beam - room}
        text-anchor="middle"
        data-sym={isSlack ? 'slack' : 'bandTravel'}
      >
        {isSlack ? `${slackName} ${say(slack - slackTravel)}` : `band ${gives}${say(bandTravel)}`}
      </text>
      <text
        class="halo"
        x={x}
        y={axis + beam + room + 10}
        text-anchor="middle"
        data-sym="frameTravel"
      >
        {`frame ${gives}${say(frameTravel)}`}
      </text>
      {!layout.narrow && (
        <Dimension
          from={fixed}
          to={moved}
          y={bottom + 30}
          edge={bottom + 6}
          text={formatQuantity(apart, 'longLength', state.system)}
        />
      )}
    </g>
  );
}
