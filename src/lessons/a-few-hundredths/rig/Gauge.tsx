/**
 * The gauge on its band, seen from above: the bar held by the left clamp, the dial at its end, the dial's plunger against
 * the right clamp, which goes with the band. What moves is drawn many times larger.
 * Units: SI in the state; drawing units otherwise.
 */

import { turnOf } from '../../../figures/dial/faces.ts';
import { DialHand } from '../../../figures/dial/Hand.tsx';
import { turned } from '../../../figures/turned.ts';
import type { State } from '../state.ts';
import { GAUGE, type RigLayout } from './layout.ts';

interface PartProps {
  readonly state: State;
  readonly layout: RigLayout;
}

/** Where the moving parts stand, drawn: the right clamp's inner edge without pull and now, the middle of the dial. */
function places({ values }: State, { left, scale }: RigLayout) {
  const far = GAUGE.times * scale;
  const rest = left + values.rigLength * scale;
  const slipped = values.fault === 'slip' ? values.slip : 0;
  const dial = rest - (GAUGE.plunger.reach + GAUGE.dial) * scale + far * values.barGrowth;
  return { rest, clamp: rest + far * (values.rigStretch + values.bandGrowth + slipped), dial };
}

/** The dial, its marks by tens; it runs backwards, as its plunger comes out. */
function Dial({ state, layout, x }: PartProps & { readonly x: number }) {
  const { values, system } = state;
  const radius = GAUGE.dial * layout.scale;
  const at = { x, y: layout.band };
  const turn = turnOf(system === 'us' ? 'inch' : 'metric');
  const marks = Array.from({ length: 10 }, (_, tenth) => {
    const [from, to] = [turned(at, radius - 2, tenth / 10), turned(at, radius * 0.82, tenth / 10)];
    return `M${from.x} ${from.y}L${to.x} ${to.y}`;
  });
  return (
    <g>
      <circle class="outline paper-fill" cx={x} cy={at.y} r={radius} />
      <path class="thin" d={marks.join('')} />
      <DialHand
        {...at}
        reach={radius * 0.74}
        turns={-values.rigStretch / turn}
        isBefore
        wide={radius / 12}
        tail={radius / 4}
      />
      <DialHand
        {...at}
        reach={radius * 0.74}
        turns={-values.rigShown / turn}
        isBefore={false}
        wide={radius / 20}
        tail={radius / 4}
      />
    </g>
  );
}

function Clamp({
  x,
  layout,
  isGone,
}: {
  readonly x: number;
  readonly layout: RigLayout;
  readonly isGone?: boolean;
}) {
  const { width, height } = GAUGE.clamp;
  return (
    <rect
      class={isGone ? 'hidden-edge' : 'outline paper-fill'}
      x={x}
      y={layout.band - (height / 2) * layout.scale}
      width={width * layout.scale}
      height={height * layout.scale}
    />
  );
}

/** The gauge, turned as a whole about its middle where it lies askew. */
export function Gauge({ state, layout }: PartProps) {
  const { left, band, scale } = layout;
  const { values } = state;
  const { rest, clamp, dial } = places(state, layout);
  const bar = (GAUGE.bar / 2) * scale;
  const plunger = (GAUGE.plunger.height / 2) * scale;
  const degrees = values.fault === 'angle' ? (values.angle * 180) / Math.PI : 0;
  const width = GAUGE.clamp.width * scale;
  return (
    <g transform={`rotate(${degrees.toFixed(3)} ${(left + rest) / 2} ${band})`}>
      <Clamp x={rest} layout={layout} isGone />
      <rect
        class="outline paper-fill"
        x={left - width / 2}
        y={band - bar}
        width={dial - left}
        height={2 * bar}
      />
      <rect
        class="outline paper-fill"
        x={dial}
        y={band - plunger}
        width={clamp - dial}
        height={2 * plunger}
      />
      <Clamp x={left - width} layout={layout} />
      <Clamp x={clamp} layout={layout} />
      <Dial state={state} layout={layout} x={dial} />
    </g>
  );
}
