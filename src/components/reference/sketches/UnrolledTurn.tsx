/** One turn of a thread, unrolled: a ramp as long as once round the screw and as high as its lead. Drawing units. */
import { Name } from './kit/Name.tsx';
import { Level, Upright } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [LEFT, RIGHT, FOOT, TOP] = [8, 164, 84, 32];

/** The ramp with its two sides and its angle. */
export function UnrolledTurn({ sheet }: SketchProps<'unrolled-turn'>) {
  const middle = { x: (LEFT + RIGHT) / 2, y: (FOOT + TOP) / 2 };
  const round = { words: 'once round', part: 'one-turn' } as const;
  return (
    <g>
      <path class="construction" d={`M${LEFT} ${FOOT}V${TOP}H${RIGHT}`} />
      {sheet.has('second-start') && (
        <path
          class="outline"
          d={`M${LEFT} ${middle.y}L${middle.x} ${TOP}M${middle.x} ${FOOT}L${RIGHT} ${middle.y}`}
        />
      )}
      <path class="outline" d={`M${LEFT} ${FOOT}H${RIGHT}V${TOP}z`} />
      <Name
        sheet={sheet}
        part="second-start"
        words="second thread"
        x={86}
        y={22}
        anchor="middle"
        leader={`M86 26L${middle.x - 22} 40`}
      />
      {sheet.has('lead-angle') && <path class="thin" d="M66 84A58 58 0 0 0 63 65.700" />}
      <Name sheet={sheet} part="lead-angle" words="lead angle" x={76} y={79} />
      <Upright
        sheet={sheet}
        part="lead"
        words="lead"
        from={TOP}
        to={FOOT}
        edge={RIGHT + 3}
        x={184}
      />
      <Level sheet={sheet} {...round} from={LEFT} to={RIGHT} edge={FOOT + 3} y={106} />
    </g>
  );
}
