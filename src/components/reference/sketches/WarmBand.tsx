/** A warm band: held between two walls that stay cold, or beside a bar that warms with it; dashed, how far each would grow. Drawing units. */
import { Name } from './kit/Name.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [LEFT, RIGHT] = [14, 124];

interface StripProps {
  readonly y: number;
  readonly height: number;
  readonly growth: number;
}

/** A strip, and dashed what it gains. */
function Strip({ y, height, growth }: StripProps) {
  return (
    <>
      <path class="outline shade-fill" d={`M${LEFT} ${y}H${RIGHT}v${height}H${LEFT}z`} />
      <path class="hidden-edge" d={`M${RIGHT} ${y}h${growth}v${height}h-${growth}`} />
    </>
  );
}

/** Band with walls, or with the bar. */
export function WarmBand({ sheet }: SketchProps<'warm-band'>) {
  const isHeld = sheet.has('walls');
  return (
    <g>
      <path class="limit" d={`M${LEFT} 12V84${isHeld ? `M${RIGHT} 12V84` : ''}`} />
      <Strip y={54} height={16} growth={26} />
      {sheet.has('bar') && <Strip y={26} height={10} growth={16} />}
      <Name sheet={sheet} part="walls" words="if it were free" x={RIGHT + 6} y={46} />
      <Name sheet={sheet} part="bar" words="bar" x={28} y={20} />
      <Name sheet={sheet} part="bar" words="band" x={28} y={86} />
    </g>
  );
}
