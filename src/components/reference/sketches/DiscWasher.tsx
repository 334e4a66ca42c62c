/** A dished washer cut through its middle. Drawing units. */
import { Cut } from './kit/Cut.tsx';
import { Name } from './kit/Name.tsx';
import { Level, Upright } from './kit/Size.tsx';
import type { SketchProps } from './kit/sheet.ts';

/** Both cut halves, the hole's and the rim's edges between them, sizes. */
export function DiscWasher({ sheet }: SketchProps<'disc-washer'>) {
  const left = 'M16 66L66 38L70.400 45.900L20.400 73.900z';
  const right = 'M172 66L122 38L117.600 45.900L167.600 73.900z';
  const outer = { words: '', part: 'outer-diameter' } as const;
  return (
    <g>
      <path class="thin" d="M66 38H122M70.400 45.900H117.600M20.400 73.900H167.600" />
      <Cut id={`${sheet.id}-l`} d={left} within={[16, 38, 55, 36]} spacing={5} />
      <Cut id={`${sheet.id}-r`} d={right} within={[117, 38, 55, 36]} spacing={5} />
      <path class="centre" d="M94 20V96" />
      <Name
        sheet={sheet}
        part="dished-ring"
        words="pressed flatter, it pushes back"
        x={94}
        y={104}
        anchor="middle"
      />
      <Level sheet={sheet} {...outer} from={16} to={172} edge={72} y={100} />
      <Level sheet={sheet} part="inner-diameter" words="" from={70} to={118} edge={36} y={22} />
      <Upright sheet={sheet} part="free-depth" words="" from={45.9} to={73.9} edge={170} x={190} />
      <Name sheet={sheet} part="washer-thickness" words="" x={28} y={36} leader="M34 38L44 54" />
    </g>
  );
}
