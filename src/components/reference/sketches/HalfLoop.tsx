/** The movable wheel by itself: what pushes it outwards, and the two strands that pull it back. Drawing units. */
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { Name } from './kit/Name.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [AXIS, RADIUS, WHEEL] = [54, 36, 112];

/** Wheel, cut strands, three forces in balance. */
export function HalfLoop({ sheet }: SketchProps<'half-loop'>) {
  const ends = [AXIS - RADIUS, AXIS + RADIUS];
  return (
    <g>
      <circle class="outline" cx={WHEEL} cy={AXIS} r={RADIUS - 4} />
      <circle class="ink-fill" cx={WHEEL} cy={AXIS} r="3" />
      <path
        class="steel-line"
        d={`M60 ${ends[0]}H${WHEEL}A${RADIUS} ${RADIUS} 0 0 1 ${WHEEL} ${ends[1]}H60`}
      />
      {sheet.has('strand-force') &&
        ends.map((y) => <ForceArrow key={y} x={58} y={y} length={-40} ink="steel" />)}
      <ForceArrow x={WHEEL} y={AXIS} length={80} ink="ink" />
      <Name
        sheet={sheet}
        part="strand-force"
        words="one strand"
        x={18}
        y={ends[0] === undefined ? 0 : ends[0] + 18}
      />
      <Name
        sheet={sheet}
        part="wheel-force"
        words="on the wheel"
        x={220}
        y={AXIS - 8}
        anchor="end"
      />
    </g>
  );
}
