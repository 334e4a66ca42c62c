/**
 * One band of a comparison: its section to scale, the stress at the old torque, the torque that gives the wanted
 * stress. Units: SI in the props; drawing units otherwise.
 */

import { Hatch } from '../../figures/Hatch.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';

/** What one row shows. */
export interface SettingRowProps {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly thickness: number;
  readonly area: number;
  readonly stress: number;
  readonly targetStress: number;
  readonly torque: number;
  readonly system: UnitSystem;
  readonly y: number;
  readonly columns: SettingColumns;
}

/** Where the columns stand, and their scales. */
export interface SettingColumns {
  readonly section: number;
  readonly perMetre: number;
  readonly stress: number;
  readonly stressWidth: number;
  readonly torque: number;
  /** On a phone the numbers go under the drawing. */
  readonly stacked: boolean;
}

const MOST_STRESS = 300e6;

/** A row: name, hatched section, bar of stress against the wanted one, torque. */
export function SettingRow(props: SettingRowProps) {
  const { id, name, width, thickness, area, stress, targetStress, torque, system, y, columns } =
    props;
  const [w, t] = [width * columns.perMetre, thickness * columns.perMetre];
  const bar = (value: number) => (Math.min(value, MOST_STRESS) / MOST_STRESS) * columns.stressWidth;
  const second = columns.stacked ? y + 46 : y + 12;
  const wanted = columns.stress + bar(targetStress);
  return (
    <g>
      <text x={columns.section} y={y - 8}>
        {name}
      </text>
      <Hatch id={id} x={columns.section} y={y} width={w} height={t} />
      <rect class="outline" x={columns.section} y={y} width={w} height={t} />
      <text class="steel" x={columns.section + w + 8} y={y + 12}>
        {formatQuantity(area, 'area', system)}
      </text>
      <rect class="steel-fill" x={columns.stress} y={second - 9} width={bar(stress)} height={8} />
      <path class="thin" d={`M${wanted} ${second - 15}V${second + 5}`} />
      <text
        class="steel halo"
        x={columns.stress + Math.max(bar(stress), bar(targetStress)) + 8}
        y={second}
      >
        {formatQuantity(stress, 'stress', system)}
      </text>
      <text class="hand" x={columns.torque} y={second} text-anchor="end">
        {formatQuantity(torque, 'torque', system)}
      </text>
    </g>
  );
}
