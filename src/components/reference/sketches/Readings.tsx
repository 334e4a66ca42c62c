/** Readings of the dial over the torque, and the line through the upper ones, drawn on to where nothing pulls. Drawing units. */
import { ArrowHead } from '../../../figures/dimension.tsx';
import { Axes } from './kit/Axes.tsx';
import { Name } from './kit/Name.tsx';
import type { SketchProps } from './kit/sheet.ts';

const FREE = 52; // the no-load torque
const line = (x: number) => 84 - 0.44 * (x - FREE);
const READINGS = [
  [FREE, 104],
  [60, 92],
  [74, 77.5],
  [96, 66],
  [120, 53],
  [144, 45],
  [168, 32],
  [192, 23],
] as const;

function Marks({ sheet }: SketchProps<'readings'>) {
  return (
    <>
      {sheet.has('zero') && <path class="steel-line" d={`M12 84H${FREE}`} />}
      <Name sheet={sheet} part="zero" words="zero" x={18} y={78} />
      {sheet.has('intercept') && <circle class="ink-fill" cx="12" cy={line(12)} r="4" />}
      <Name
        sheet={sheet}
        part="intercept"
        words="intercept"
        x={26}
        y={64}
        leader={`M40 68L15 ${line(12) - 5}`}
      />
      {sheet.has('residual') && <path class="limit" d={`M144 ${line(144)}V62`} />}
      <Name sheet={sheet} part="residual" words="residual" x={150} y={62} />
      {sheet.has('toe') && <path class="limit" d="M52 104C55 90 62 82 74 77" />}
      <Name sheet={sheet} part="toe" words="toe" x={84} y={92} leader="M81 89L64 86" />
      <Name
        sheet={sheet}
        part="drag-torque"
        words="no-load torque"
        x={FREE}
        y={126}
        anchor={sheet.lettering('drag-torque', '').isLetter ? 'middle' : 'start'}
      />
    </>
  );
}

/** Axes, readings, line. */
export function Readings({ sheet }: SketchProps<'readings'>) {
  const from = sheet.has('intercept') ? 12 : FREE;
  const readings = READINGS.map(([x, y]) =>
    x === 144 && sheet.has('residual') ? [x, 62] : [x, y],
  );
  return (
    <g>
      <Axes top={18} bottom={110} right={214} up="dial" along={sheet.load} />
      <path
        class={sheet.has('drag-torque') ? 'hand-line' : 'construction'}
        d={`M${FREE} 110V${sheet.has('drag-torque') ? 88 : 104}`}
      />
      <path class="steel-thin" d={`M${from} ${line(from)}L206 ${line(206)}`} />
      {readings.map(([x, y]) => (
        <circle key={x} class="ink-fill" cx={x} cy={y} r="3" />
      ))}
      {sheet.has('hysteresis') && (
        <>
          <path class="outline" d="M192 23C150 30 110 48 66 73" />
          <ArrowHead x={60} y={77} angle={149} />
        </>
      )}
      <Name
        sheet={sheet}
        part="hysteresis"
        words="on the way down"
        x={36}
        y={34}
        leader="M100 40L124 44"
      />
      <Marks sheet={sheet} />
    </g>
  );
}
