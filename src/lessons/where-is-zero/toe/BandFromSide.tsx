/**
 * The band from the side as its curl leaves it, with two clamps, the bar between them and the dial at its end. The curve
 * and what moves are drawn many times larger; the clamps keep their height on the page.
 * Units: SI in the state; drawing units otherwise.
 */
import { ArrowHead } from '../../../figures/dimension.tsx';
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import type { State } from '../state.ts';
import { bandAt } from './curl.ts';
import { Dial } from './Dial.tsx';
import { type ToeLayout, toeLayout } from './layout.ts';
import { atRest } from './rest.worked.ts';

const STEPS = 16;
const THICK = 3; // half of the band as it is drawn
const DIAL_GAP = 14; // between the dial and the far post where that comes nearest

/** Where the band is: heights along it, and how its posts lean. */
function shapeOf(state: State, layout: ToeLayout) {
  const { load, side } = state.values;
  const { middle, clamps, gauge, post, perMovement } = layout;
  const { curlLeft, stretch, toe } = bandAt(load, side);
  const bend = side === 'hollow' ? 1 : -1;
  const curvature = (atRest.shift * perMovement * curlLeft) / (post * gauge); // so that leaning posts move as the dial says
  const half = (gauge + stretch * perMovement) / 2;
  const lean = (toe * perMovement) / 2;
  const height = (along: number) =>
    clamps + (bend * curvature * ((gauge / 2) ** 2 - along ** 2)) / 2;
  return { half, lean, height, middle, top: clamps - post };
}

type Shape = ReturnType<typeof shapeOf>;

/** The band as a strip of even thickness. */
function Strip({ shape, reach }: { readonly shape: Shape; readonly reach: number }) {
  const { middle, height } = shape;
  const places = Array.from({ length: STEPS + 1 }, (_, i) => reach * ((2 * i) / STEPS - 1));
  const edge = (offset: number) => (along: number) =>
    `${middle + along} ${Math.round(10 * (height(along) + offset)) / 10}`;
  const upper = places.map(edge(-THICK)).join('L');
  const lower = places.map(edge(THICK)).reverse().join('L');
  return <path class="outline shade-fill" d={`M${upper}L${lower}Z`} />;
}

/** A clamp on the band with its post up to the bar. */
function Post({ shape, sign }: { readonly shape: Shape; readonly sign: 1 | -1 }) {
  const { middle, half, lean, height, top } = shape;
  const foot = middle + sign * half;
  return (
    <path
      class="outline"
      d={`M${foot} ${height(half) + THICK + 6}V${height(half) - THICK}L${foot + sign * lean} ${top}`}
    />
  );
}

/** The bar from the near post to the dial, and the dial's plunger to the far post. */
function BarWithDial({ state, layout }: { readonly state: State; readonly layout: ToeLayout }) {
  const shape = shapeOf(state, layout);
  const { middle, half, lean, top } = shape;
  const near = middle - half - lean;
  const far = middle + half + lean;
  const slackest = layout.gauge - atRest.shift * layout.perMovement;
  const end = near + slackest - layout.dial - DIAL_GAP;
  return (
    <g>
      <path class="outline" d={`M${near} ${top}H${end}`} />
      <text class="note" x={near + 8} y={top - 8}>
        bar
      </text>
      <path class="steel-line" d={`M${end} ${top}H${far}`} />
      <ArrowHead x={far} y={top} angle={0} ink="steel" size={7} />
      <Dial x={end} y={top} radius={layout.dial} reading={state.values.dialFromSlack} />
    </g>
  );
}

const ARROW = 48; // for the highest stress

/** The whole side view. */
export function BandFromSide({ state }: { readonly state: State }) {
  const layout = toeLayout(state.narrow);
  const shape = shapeOf(state, layout);
  const { middle, half } = layout;
  const pull = ((state.narrow ? 0.2 : 1) * ARROW * state.values.stress) / state.values.topStress;
  const level = shape.height(half);
  return (
    <g>
      <Strip shape={shape} reach={half} />
      <Post shape={shape} sign={-1} />
      <Post shape={shape} sign={1} />
      <ForceArrow x={middle - half} y={level} length={-pull} ink="steel" />
      <ForceArrow x={middle + half} y={level} length={pull} ink="steel" />
      <BarWithDial state={state} layout={layout} />
      <text class="note" x={middle - layout.gauge / 2 + 26} y={layout.clamps - layout.post / 2}>
        clamp
      </text>
      {!state.narrow && (
        <text class="note" x={middle} y={layout.clamps + 54} text-anchor="middle">
          the band, seen from the side
        </text>
      )}
    </g>
  );
}
