/** A thread cut along its axis: ridges that lean, and the diameter at which ridge and groove are equally wide. Drawing units. */

import { Cut } from './kit/Cut.tsx';
import { Name } from './kit/Name.tsx';
import { Level, Upright } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const RIDGE = 'l8-18h14l8 18h14'; // 44 from one to the next; half the depth at 40 and 100
const MIRRORED = 'l-8 18h-14l-8-18h-14';

/** The thread with its sizes; the ridges below stand half a pitch further on, as on a thread of one start. */
export function ThreadForm({ sheet }: SketchProps<'thread-form'>) {
  const profile = `M8 49h7${RIDGE.repeat(3)}H162V91h-7${MIRRORED.repeat(3)}H8z`;
  return (
    <g>
      <path class="centre" d="M0 70H176" />
      <Cut id={sheet.id} d={profile} within={[8, 31, 154, 78]} spacing={9} />
      <path class="construction" d="M8 40H172M8 100H172" />
      {sheet.has('ridge') && <path class="limit" d="M59 49l8-18h14l8 18" />}
      <Name sheet={sheet} part="ridge" words="ridge" x={74} y={20} anchor="middle" />
      <Level sheet={sheet} part="pitch" words="pitch" from={30} to={74} edge={29} y={18} />
      <Upright sheet={sheet} part="pitch-diameter" words="" from={40} to={100} edge={164} x={184} />
      {sheet.has('half-angle') && (
        <>
          <path class="thin" d="M89 49V4M89 49L71.500 9.600M89 13A36 36 0 0 0 74.400 16.100" />
          <Name sheet={sheet} part="half-angle" words="half angle" x={94} y={18} />
        </>
      )}
    </g>
  );
}
