/**
 * Three bands under one handle: the band as it was, the same band re-sharpened, another band; what each feels at the
 * old torque, and the torque that gives each the wanted stress.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { type SettingColumns, SettingRow } from './SettingRow.tsx';

const say = ({ values, system }: FigureState, name: string, kind: QuantityKind, digits?: number) =>
  formatQuantity(values[name] ?? 0, kind, system, { digits });

function times(state: FigureState): string {
  const count = state.values['sharpenings'] ?? 0;
  return count === 1 ? 'a re‑sharpening' : `${say(state, 'sharpenings', 'count')} re‑sharpenings`;
}

function finding(state: FigureState): string {
  const other = `For ${say(state, 'targetStress', 'stress')} the other band takes ${say(state, 'otherTorque', 'torque')} instead of ${say(state, 'torque', 'torque')}`;
  if (state.values['sharpenings'] === 0) return `${other}.`;
  return `${other}; left at the old torque, ${times(state)} raise the stress by ${say(state, 'sharpenedRise', 'percent', 2)}.`;
}

function description(state: FigureState): string {
  return `Three sections to scale with their stress at ${say(state, 'torque', 'torque')} and the torque for ${say(state, 'targetStress', 'stress')}: as it was ${say(state, 'area', 'area')}; after ${times(state)} ${say(state, 'sharpenedArea', 'area')}; the other band ${say(state, 'otherArea', 'area')}.`;
}

function notes(state: FigureState): readonly string[] {
  return [
    'sections true to scale with each other',
    `one re-sharpening takes ${say(state, 'lostWidth', 'length', 1)} of width (common practice, no source)`,
    `torques calculated from the screw of one mill, Ottersleigh, drag of ${say(state, 'dragTorque', 'torque')} included`,
  ];
}

const WIDE: SettingColumns = {
  section: 20,
  perMetre: 9500,
  stress: 510,
  stressWidth: 230,
  torque: 870,
  stacked: false,
};
const NARROW: SettingColumns = {
  section: 6,
  perMetre: 6000,
  stress: 6,
  stressWidth: 180,
  torque: 354,
  stacked: true,
};

function rows({ values }: FigureState) {
  const {
    bodyWidth = 0,
    thickness = 0,
    sharpenedWidth = 0,
    otherWidth = 0,
    otherThickness = 0,
  } = values;
  const { area = 0, sharpenedArea = 0, otherArea = 0, targetStress = 0 } = values;
  const {
    sharpenedStress = 0,
    otherStress = 0,
    torque = 0,
    sharpenedTorque = 0,
    otherTorque = 0,
  } = values;
  return {
    asItWas: { width: bodyWidth, thickness, area, stress: targetStress, torque },
    sharpened: {
      width: sharpenedWidth,
      thickness,
      area: sharpenedArea,
      stress: sharpenedStress,
      torque: sharpenedTorque,
    },
    other: {
      width: otherWidth,
      thickness: otherThickness,
      area: otherArea,
      stress: otherStress,
      torque: otherTorque,
    },
  };
}

function Drawing(state: FigureState) {
  const columns = state.narrow ? NARROW : WIDE;
  const { asItWas, sharpened, other } = rows(state);
  const [first, gap, height] = state.narrow ? [70, 96, 330] : [72, 76, 260];
  const common = { system: state.system, columns, targetStress: state.values['targetStress'] ?? 0 };
  const id = (name: string) => `${state.idPrefix}-${name}`;
  return (
    <Sheet idPrefix={state.idPrefix} size={{ width: state.narrow ? 360 : 880, height }}>
      <text class="note" x={columns.stress} y={18}>
        {state.narrow ? 'stress at the old torque' : `stress at ${say(state, 'torque', 'torque')}`}
      </text>
      <text class="note" x={columns.torque} y={18} text-anchor="end">
        {state.narrow ? 'torque to set' : `torque for ${say(state, 'targetStress', 'stress')}`}
      </text>
      <path class="axis" d={`M${columns.section} 28H${columns.torque}`} />
      <SettingRow
        {...common}
        {...asItWas}
        id={id('new')}
        name="the band of the first figure"
        y={first}
      />
      <SettingRow
        {...common}
        {...sharpened}
        id={id('ground')}
        name={`after ${times(state)}`}
        y={first + gap}
      />
      <SettingRow
        {...common}
        {...other}
        id={id('other')}
        name="the other band"
        y={first + 2 * gap}
      />
    </Sheet>
  );
}

/** The second figure of the lesson `steel-in-the-section`. */
export const figure: FigureModule = { finding, description, notes, Drawing };
