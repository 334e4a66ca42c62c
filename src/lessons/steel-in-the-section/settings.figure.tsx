/**
 * Three bands under one handle: the band as it was, the same band re-sharpened, another band; what each feels at the
 * old torque, and the torque that gives each the wanted stress.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { steelInTheSection } from './model.ts';
import { type SettingColumns, SettingRow } from './SettingRow.tsx';
import type { Figure, State } from './state.ts';

const say = teller(steelInTheSection);

function times(state: State): string {
  const count = state.values.sharpenings;
  return count === 1 ? 'a re‑sharpening' : `${say(state, 'sharpenings')} re‑sharpenings`;
}

function finding(state: State): string {
  const other = `For ${say(state, 'targetStress')} the other band takes ${say(state, 'otherTorque')} instead of ${say(state, 'torque')}`;
  if (state.values.sharpenings === 0) return `${other}.`;
  return `${other}; left at the old torque, ${times(state)} raise the stress by ${say(state, 'sharpenedRise', 2)}.`;
}

function description(state: State): string {
  return `Three sections to scale with their stress at ${say(state, 'torque')} and the torque for ${say(state, 'targetStress')}: as it was ${say(state, 'area')}; after ${times(state)} ${say(state, 'sharpenedArea')}; the other band ${say(state, 'otherArea')}.`;
}

function notes(state: State): readonly string[] {
  return [
    'sections true to scale with each other',
    `one re-sharpening takes ${say(state, 'lostWidth', 1)} of width (common practice, no source)`,
    `torques calculated from the screw of one mill, Ottersleigh, drag of ${say(state, 'dragTorque')} included`,
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

function rows({ values }: State) {
  const { bodyWidth, thickness, sharpenedWidth, otherWidth, otherThickness } = values;
  const { area, sharpenedArea, otherArea, targetStress } = values;
  const { sharpenedStress, otherStress, torque, sharpenedTorque, otherTorque } = values;
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

function Drawing(state: State) {
  const columns = state.narrow ? NARROW : WIDE;
  const { asItWas, sharpened, other } = rows(state);
  const [first, gap, height] = state.narrow ? [70, 96, 330] : [72, 76, 260];
  const common = { system: state.system, columns, targetStress: state.values.targetStress };
  const id = (name: string) => `${state.idPrefix}-${name}`;
  return (
    <Sheet idPrefix={state.idPrefix} size={{ width: state.narrow ? 360 : 880, height }}>
      <text class="note" x={columns.stress} y={18}>
        {state.narrow ? 'stress at the old torque' : `stress at ${say(state, 'torque')}`}
      </text>
      <text class="note" x={columns.torque} y={18} text-anchor="end">
        {state.narrow ? 'torque to set' : `torque for ${say(state, 'targetStress')}`}
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
export const figure: Figure = { finding, description, notes, Drawing };
