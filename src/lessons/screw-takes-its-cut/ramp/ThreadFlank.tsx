/**
 * The thread's ridge cut along the screw's axis, its core at the left, and how its flank leans: the steeper the
 * flank, the harder it is wedged. The form is drawn to scale for its pitch.
 * Units: SI in the state; drawing units otherwise.
 */

import { Hatch } from '../../../figures/Hatch.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import type { RampLayout } from './layout.ts';

/** Depth of the ridge as a share of the pitch: half for the power forms, 17/24 of the sharp height for a V. */
const DEPTH = { square: 0.5, acme: 0.5, trapezoidal: 0.5, v60: 0.613 } as const;
const CORE = 14;

/** Outline of two ridges, from the root at the top to the root at the bottom. */
function outline(x: number, y: number, pitch: number, depth: number, lean: number): string {
  const fall = (depth / 2) * Math.tan(lean);
  const ridges = [0, 1].map((place) => {
    const middle = y + (place + 0.5) * pitch;
    const root = pitch / 4 + fall;
    const crest = pitch / 4 - fall;
    return `V${middle - root}L${x + depth} ${middle - crest}V${middle + crest}L${x} ${middle + root}`;
  });
  return `M${x} ${y - 4}${ridges.join('')}V${y + 2 * pitch + 4}`;
}

/** The flank with its words. */
export function ThreadFlank({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: RampLayout;
}) {
  const { values, system, narrow, idPrefix } = state;
  const { x, y, pitch, wordsX, wordsY } = layout.flank;
  const { halfAngle, wedging, threadForm } = values;
  const depth = DEPTH[threadForm] * pitch;
  const lean = formatQuantity(halfAngle, 'angle', system);
  const words = narrow
    ? [`flank ${lean}`]
    : [`flank leans ${lean}`, `friction felt × ${formatQuantity(wedging, 'ratio', system)}`];
  return (
    <g data-sym="threadForm">
      <Hatch id={`${idPrefix}-core`} x={x} y={y - 4} width={CORE} height={2 * pitch + 8} />
      <path class="outline shade-fill" d={outline(x + CORE, y, pitch, depth, halfAngle)} />
      {words.map((text, line) => (
        <text key={line} x={wordsX} y={wordsY + line * 20} text-anchor={narrow ? 'end' : 'start'}>
          {text}
        </text>
      ))}
    </g>
  );
}
