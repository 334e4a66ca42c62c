/**
 * One band laid over the first one: what it carries is hatched, what it has lost is hatched closer, on red, the first band's outline is
 * dashed; beside it the stress at the old torque and the torque that gives the wanted stress. Thickness is exaggerated.
 * Units: SI in the props; drawing units otherwise.
 */

import { Hatch } from '../../figures/Hatch.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';

/** How many times thicker than to the scale of the width a section is drawn. */
export const THICKER = 3;

/** A section by its sizes. */
interface Sizes {
  readonly width: number;
  readonly thickness: number;
}

/** What one row shows. */
export interface SettingRowProps extends Sizes {
  readonly id: string;
  readonly name: string;
  readonly area: number;
  readonly stress: number;
  readonly targetStress: number;
  readonly torque: number;
  readonly system: UnitSystem;
  readonly y: number;
  readonly columns: SettingColumns;
  /** The band that was on before. */
  readonly before: Sizes;
}

/** Where the columns are, and their scales. */
export interface SettingColumns {
  readonly section: number;
  readonly perMetre: number;
  readonly stress: number;
  readonly stressWidth: number;
  readonly torque: number;
  /** On a phone the numbers go under the drawing, so far below its upper edge. */
  readonly below: number;
}

const MOST_STRESS = 600e6;

/** The section over the one before. */
function Overlay({ id, y, columns, before, ...now }: SettingRowProps) {
  const { section: x, perMetre } = columns;
  const drawn = ({ width, thickness }: Sizes) =>
    [width * perMetre, thickness * perMetre * THICKER] as const;
  const [width, height] = drawn(now);
  const [oldWidth, oldHeight] = drawn(before);
  return (
    <g>
      <rect class="steel-wash" x={x} y={y} width={oldWidth} height={oldHeight} />
      <Hatch id={`${id}-loss`} x={x} y={y} width={oldWidth} height={oldHeight} spacing={3} />
      <rect class="paper-fill" x={x} y={y} width={width} height={height} />
      <Hatch id={id} x={x} y={y} width={width} height={height} />
      <rect class="outline" x={x} y={y} width={width} height={height} />
      <rect class="hidden-edge" x={x} y={y} width={oldWidth} height={oldHeight} />
    </g>
  );
}

/** A row: name, section over section, bar of stress against the wanted one, torque. */
export function SettingRow(props: SettingRowProps) {
  const { name, area, stress, targetStress, torque, system, y, columns } = props;
  const bar = (value: number) => (Math.min(value, MOST_STRESS) / MOST_STRESS) * columns.stressWidth;
  const level = y + columns.below;
  const wanted = columns.stress + bar(targetStress);
  return (
    <g>
      <text x={columns.section} y={y - 8}>
        {name}, {formatQuantity(area, 'area', system)}
      </text>
      <Overlay {...props} />
      <rect class="steel-fill" x={columns.stress} y={level - 9} width={bar(stress)} height={8} />
      <path class="outline" d={`M${wanted} ${level - 15}V${level + 5}`} />
      <text
        class="steel halo"
        x={columns.stress + Math.max(bar(stress), bar(targetStress)) + 8}
        y={level}
      >
        {formatQuantity(stress, 'stress', system)}
      </text>
      <text class="hand" x={columns.torque} y={level} text-anchor="end">
        {formatQuantity(torque, 'torque', system)}
      </text>
    </g>
  );
}
