/** The movable wheel by itself: what pushes it outwards, and the two strands that pull it back. Drawing units. */
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { Name } from './kit/Name.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [AXIS, RADIUS, WHEEL] = [54, 36, 112];
const ENDS = [AXIS - RADIUS, AXIS + RADIUS] as const;

/** Wheel, cut strands, three forces in balance. */
export function HalfLoop({ sheet }: SketchProps<'half-loop'>) {
  return (
    <g>
      <circle class="outline" cx={WHEEL} cy={AXIS} r={RADIUS - 4} />
      <circle class="ink-fill" cx={WHEEL} cy={AXIS} r="3" />
      <path
        class="steel-line"
        d={`M60 ${ENDS[0]}H${WHEEL}A${RADIUS} ${RADIUS} 0 0 1 ${WHEEL} ${ENDS[1]}H60`}
      />
      {ENDS.map((y) => (
        <ForceArrow key={y} x={60} y={y} length={-44} ink="steel" />
      ))}
      <ForceArrow x={WHEEL} y={AXIS} length={80} ink="ink" />
      <Name sheet={sheet} part="strand-force" words="strand" x={18} y={ENDS[0] + 18} />
      <Name sheet={sheet} part="strand-force" words="strand" x={18} y={ENDS[1] - 9} />
      <Name
        sheet={sheet}
        part="wheel-force"
        words="on the wheel"
        x={218}
        y={AXIS - 8}
        anchor="end"
      />
    </g>
  );
}
