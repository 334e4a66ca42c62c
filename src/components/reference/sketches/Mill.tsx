/** The head of a mill from its side: two wheels, the band round them, guides beside the cut, the tensioner. Drawing units. */
import { Name } from './kit/Name.tsx';
import { Level } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [FIXED, MOVED, AXIS, RADIUS] = [42, 146, 44, 36];
const [TOP, BOTTOM] = [AXIS - RADIUS, AXIS + RADIUS];
const ROUND = `A${RADIUS} ${RADIUS} 0 0 1`;

const LEFT_ROUND = `M${FIXED} ${BOTTOM}${ROUND} ${FIXED} ${TOP}`;
const RIGHT_ROUND = `M${MOVED} ${TOP}${ROUND} ${MOVED} ${BOTTOM}`;

/** What carries the movable wheel outwards: block, plate, screw, handle. */
function Tensioner({ line }: { readonly line: string }) {
  return (
    <>
      <path
        class={`${line} paper-fill`}
        d="M134 36h24v16h-24zM158 41h36v6h-36zM180 30h6v11h-6zM180 47h6v11h-6z"
      />
      <path class={line} d="M196 26V62" />
    </>
  );
}

/** The mill; what is marked is heavy, the rest pencil. */
export function Mill({ sheet }: SketchProps<'mill'>) {
  const isWhole = sheet.has('band') || sheet.has('loop-length');
  const loop = isWhole ? 'steel-line' : 'construction';
  const strand = sheet.has('strand') ? 'steel-line' : loop;
  const wheel = { words: 'wheel', part: 'wheel-diameter' } as const;
  return (
    <g>
      {[FIXED, MOVED].map((x) => (
        <circle key={x} class="construction" cx={x} cy={AXIS} r={RADIUS - 5} />
      ))}
      <path class={sheet.has('wrap') ? 'limit' : loop} d={LEFT_ROUND} />
      <path class={loop} d={RIGHT_ROUND} />
      <path class={strand} d={`M${FIXED} ${TOP}H${MOVED}M${FIXED} ${BOTTOM}H${MOVED}`} />
      {[72, 116].map((x) => (
        <circle key={x} class={`${sheet.line('guide')} paper-fill`} cx={x} cy={BOTTOM - 6} r="5" />
      ))}
      <Tensioner line={sheet.line('tensioner')} />
      <Level sheet={sheet} part="span" words="span" from={72} to={116} edge={BOTTOM + 3} y={100} />
      <Level
        sheet={sheet}
        {...wheel}
        from={FIXED - RADIUS}
        to={FIXED + RADIUS}
        edge={AXIS}
        y={100}
      />
      <Level sheet={sheet} part="centre-distance" words="" from={FIXED} to={MOVED} y={AXIS} />
      <Names sheet={sheet} />
    </g>
  );
}

function Names({ sheet }: SketchProps<'mill'>) {
  const middle = (FIXED + MOVED) / 2;
  return (
    <>
      <Name sheet={sheet} part="band" words="band" x={middle} y={28} anchor="middle" />
      <Name sheet={sheet} part="loop-length" words="once round" x={118} y={25} anchor="end" />
      <Name
        sheet={sheet}
        part="strand"
        words="strand"
        x={middle}
        y={AXIS + 4}
        anchor="middle"
        leader={`M${middle} ${AXIS - 10}V${TOP + 2}M${middle} ${AXIS + 10}V${BOTTOM - 2}`}
      />
      <Name
        sheet={sheet}
        part="guide"
        words="guide"
        x={middle}
        y={58}
        anchor="middle"
        leader="M86 62L77 70M102 62L111 70"
      />
      <Name
        sheet={sheet}
        part="wrap"
        words="wrap"
        x={FIXED - 4}
        y={AXIS + 4}
        anchor="end"
        leader={`M${FIXED} ${TOP}V${BOTTOM}`}
      />
      <Name sheet={sheet} part="tensioner" words="tensioner" x={218} y={78} anchor="end" />
    </>
  );
}
