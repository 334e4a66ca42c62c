/**
 * The frame that holds the wheels apart: a beam on two arms that the band draws together, so that the beam bows. Its
 * straight shape stays as a dashed edge.
 * Units: drawing units.
 */
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { CountingLayout, CountingPartProps } from './layout.ts';

/** Outline of beam and arms with the arms' ends leaning in and the beam bowed up. */
function outline(
  { axis, beam, half }: CountingLayout,
  [left, right]: readonly [number, number],
  lean: number,
  bow: number,
): string {
  const middle = (left + right) / 2;
  const foot = axis + half * 1.6;
  const [top, under] = [beam - half, beam + half];
  return [
    `M${left - half} ${top}`,
    `L${left - half + lean} ${foot}H${left + half + lean}L${left + half} ${under}`,
    `Q${middle} ${under - 2 * bow} ${right - half} ${under}`,
    `L${right - half - lean} ${foot}H${right + half - lean}L${right + half} ${top}`,
    `Q${middle} ${top - 2 * bow} ${left - half} ${top}Z`,
  ].join('');
}

/** Frame, its straight shape, and what it gives. */
export function BowingFrame({ state, layout, places }: CountingPartProps) {
  const { arms, lean, bow } = places;
  const [left, right] = arms;
  const { frameTravel } = state.values;
  const give = formatQuantity(frameTravel, 'length', state.system, { digits: 3 });
  return (
    <g data-sym="frameTravel">
      <path class="outline paper-fill" d={outline(layout, arms, lean, bow)} />
      {lean > 0 && <path class="hidden-edge" d={outline(layout, arms, 0, 0)} />}
      <text
        class="halo"
        x={(left + right) / 2}
        y={layout.beam + layout.half + (layout.narrow ? 16 : 20)}
        text-anchor="middle"
      >
        frame gives {give}
      </text>
    </g>
  );
}
