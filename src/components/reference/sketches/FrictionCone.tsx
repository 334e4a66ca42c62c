/**
 * A block on a ramp, the load straight down, and the cone of the directions in which the ramp can push before the
 * block slides: the load within it is held. Drawing units.
 */
import { ArrowHead } from '../../../figures/dimension.tsx';
import { Name } from './kit/Name.tsx';
import type { SketchProps } from './kit/sheet.ts';

const FOOT = { x: 104, y: 86 };
const RAMP = 16; // degrees
const REACH = 70;

/** A point so far from the foot, so many degrees to the left of upright. */
function at(degrees: number, reach = REACH): string {
  const angle = (degrees * Math.PI) / 180;
  const [x, y] = [FOOT.x - reach * Math.sin(angle), FOOT.y - reach * Math.cos(angle)];
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}

/** Ramp, block, cone and load; with less friction the cone is slimmer. */
export function FrictionCone({ sheet }: SketchProps<'friction-cone'>) {
  const half = sheet.has('overhauling') ? 8 : 26;
  const foot = `${FOOT.x} ${FOOT.y}`;
  const isHolding = sheet.has('self-locking') || sheet.has('overhauling');
  const cone = `M${at(RAMP + half)}L${foot}L${at(RAMP - half)}`;
  return (
    <g>
      <path class="outline" d={`M8 113.500L190 61.300V113.500z`} />
      <g transform={`translate(${foot}) rotate(-${RAMP})`}>
        <path class="construction" d="M-28 0V-24H28V0" />
      </g>
      <path class="hand-wash" d={`${cone}z`} />
      <path class={sheet.has('friction-cone') ? 'limit' : 'thin'} d={cone} />
      <path class="centre" d={`M${foot}L${at(RAMP, REACH + 6)}`} />
      {sheet.has('friction-angle') && (
        <path class="thin" d={`M${at(RAMP, 56)}A56 56 0 0 1 ${at(RAMP - half, 56)}`} />
      )}
      {isHolding && <path class="outline" d={`M${FOOT.x} 10V${FOOT.y - 8}`} />}
      {isHolding && <ArrowHead x={FOOT.x} y={FOOT.y} angle={90} />}
      <Name
        sheet={sheet}
        part="friction-angle"
        words="friction angle"
        x={132}
        y={26}
        leader="M129 24L103 33"
      />
      <Name sheet={sheet} part="friction-cone" words="cone" x={120} y={30} />
      <Name
        sheet={sheet}
        part="self-locking"
        words="load: inside"
        x={132}
        y={20}
        leader={`M129 17H${FOOT.x + 2}`}
      />
      <Name
        sheet={sheet}
        part="overhauling"
        words="load: outside"
        x={124}
        y={20}
        leader={`M121 17H${FOOT.x + 2}`}
      />
    </g>
  );
}
