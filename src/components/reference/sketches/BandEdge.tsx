/** A piece of the band on its flank, broken off at both ends: body, teeth, gullets. Drawing units. */
import { Name } from './kit/Name.tsx';
import { Upright } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [BACK, GULLETS] = [14, 54];
const TOOTH = 'c7 0 9 4 11 7l11 10-2-11c0-4 1-6 4-6'; // from gullet to gullet
const COUNT = 5;
const [LEFT, RIGHT] = [6, 6 + 24 * COUNT];

/** The piece with its sizes. */
export function BandEdge({ sheet }: SketchProps<'band-edge'>) {
  const wave = 'c-5 13 5 27 0 40';
  const body = { words: 'body width', part: 'body-width' } as const;
  return (
    <g>
      <path class="construction" d={`M${LEFT} ${GULLETS}H${RIGHT}`} />
      <path
        class="outline"
        d={`M${RIGHT} ${GULLETS}c5-13-5-27 0-40H${LEFT}${wave}${TOOTH.repeat(COUNT)}`}
      />
      {sheet.has('gullet') && <path class="limit" d="M50 61c0-5 1-7 4-7c7 0 9 4 11 7l4 3" />}
      <Name sheet={sheet} part="gullet" words="gullet" x={70} y={94} leader="M57 58l10 28" />
      <Upright sheet={sheet} {...body} from={BACK} to={GULLETS} edge={RIGHT + 3} x={146} />
    </g>
  );
}
