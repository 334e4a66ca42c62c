/** From the measured top of the line to the torque for a target: the same line, read the other way. Drawing units. */
import { Name } from './kit/Name.tsx';
import type { SketchProps } from './kit/sheet.ts';

const [FREE, SET, TOP] = [52, 122, 180];
const line = (x: number) => 104 - 0.6 * (x - FREE);

/** Axes, line, the two pairs. */
export function Setting({ sheet }: SketchProps<'setting'>) {
  const name = { sheet, anchor: 'middle', y: 121 } as const;
  return (
    <g>
      <path class="axis" d="M36 14V104H214" />
      <path class="steel-line" d={`M${FREE} 104L${TOP} ${line(TOP)}`} />
      <path class="construction" d={`M36 ${line(TOP)}H${TOP}V104`} />
      <path class="hidden-edge" d={`M36 ${line(SET)}H${SET}V104`} />
      <circle class="steel-fill" cx={TOP} cy={line(TOP)} r="4" />
      <circle class="steel-fill" cx={SET} cy={line(SET)} r="4" />
      <Name {...name} part="drag-torque" words="" x={FREE} />
      <Name {...name} part="set-torque" words="" x={SET} />
      <Name {...name} part="top-torque" words="" x={TOP} />
      <Name sheet={sheet} part="target-stress" words="" x={30} y={line(SET) + 4} anchor="end" />
      <Name sheet={sheet} part="top-stress" words="" x={32} y={line(TOP) + 4} anchor="end" />
    </g>
  );
}
