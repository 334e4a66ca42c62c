/** A band round part of its wheel, its thickness drawn much larger: the outer face is stretched, the inner one pressed. Drawing units. */
import { ArrowHead } from '../../../figures/dimension.tsx';
import { Level } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [X, Y, RIM, THICK] = [90, 60, 42, 12];
const OUTER = RIM + THICK;

const arc = (radius: number) => `${X} ${Y - radius}A${radius} ${radius} 0 0 1 ${X} ${Y + radius}`;

/** Pull along the outer face, push along the inner one, in words. */
function Faces() {
  return (
    <>
      <path
        class="steel-line"
        d="M144.300 35.100A60 60 0 0 1 144.300 84.900"
        transform="translate(3 0)"
      />
      <ArrowHead x={145} y={31} angle={246} ink="steel" size={8} />
      <ArrowHead x={145} y={89} angle={114} ink="steel" size={8} />
      <text class="steel" x="160" y="64">
        stretched
      </text>
      <path class="steel-thin" d="M119 41A35 35 0 0 1 119 79" />
      <ArrowHead x={125} y={57} angle={84} ink="steel" size={7} />
      <ArrowHead x={125} y={63} angle={276} ink="steel" size={7} />
      <text class="steel" x="112" y="64" text-anchor="end">
        pressed
      </text>
    </>
  );
}

/** Wheel, band, faces. */
export function BentBand({ sheet }: SketchProps<'bent-band'>) {
  return (
    <g>
      <circle class="construction" cx={X} cy={Y} r={RIM} />
      <path class="outline" d={`M8 ${Y - RIM}L${arc(RIM)}H8M8 ${Y - OUTER}L${arc(OUTER)}H8`} />
      <path class="centre" d={`M8 ${Y - RIM - THICK / 2}L${arc(RIM + THICK / 2)}H8`} />
      {sheet.has('bending-stress') && <Faces />}
      <Level sheet={sheet} part="wheel-diameter" words="" from={X - RIM} to={X + RIM} y={Y} />
      <Level
        sheet={sheet}
        part="thickness"
        words=""
        from={X + RIM}
        to={X + OUTER}
        y={Y}
        named="right"
      />
    </g>
  );
}
