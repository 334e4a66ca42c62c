/**
 * Three bands under one handle: the band as it was, and laid over it the same band re-sharpened and another band; the
 * stress of each at the old torque, and the torque that gives each the wanted stress.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { steelInTheSection } from './model.ts';
import { type SettingColumns, SettingRow, THICKER } from './SettingRow.tsx';
import type { Figure, State } from './state.ts';

const say = teller(steelInTheSection);

function times(state: State): string {
  const count = state.values.sharpenings;
  return count === 1 ? 'a re-sharpening' : `${say(state, 'sharpenings')} re-sharpenings`;
}

function finding(state: State): string {
  const other = `For ${say(state, 'targetStress')} the other band needs ${say(state, 'otherTorque')} instead of ${say(state, 'torque')}`;
  if (state.values.sharpenings === 0) return `${other}.`;
  return `${other}; at the old torque, ${times(state)} ${state.values.sharpenings === 1 ? 'raises' : 'raise'} the stress by ${say(state, 'sharpenedRise', 2)}.`;
}

function description(state: State): string {
  return `Three sections to scale with their stress at ${say(state, 'torque')} and the torque for ${say(state, 'targetStress')}: as it was ${say(state, 'area')}; after ${times(state)} ${say(state, 'sharpenedArea')}; the other band ${say(state, 'otherArea')}.`;
}

function notes(state: State): readonly string[] {
  return [
    `widths to scale, thickness drawn × ${THICKER}; close hatching: steel that is ground away`,
    `one re-sharpening takes ${say(state, 'lostWidth', 1)} of width (common practice, no source)`,
    `torques calculated from the screw of one mill, Ottersleigh, with its no-load torque of ${say(state, 'dragTorque')}`,
  ];
}

const WIDE: SettingColumns = {
  section: 20,
  perMetre: 10000,
  stress: 470,
  stressWidth: 250,
  torque: 870,
  below: 22,
};
const NARROW: SettingColumns = {
  section: 6,
  perMetre: 7000,
  stress: 6,
  stressWidth: 180,
  torque: 354,
  below: 54,
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
  const [first, gap, height] = state.narrow ? [58, 108, 340] : [64, 88, 302];
  const { targetStress } = state.values;
  const common = { system: state.system, columns, targetStress, before: asItWas };
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
      <SettingRow {...common} {...asItWas} id={id('new')} name="first band" y={first} />
      <SettingRow
        {...common}
        {...sharpened}
        id={id('ground')}
        name={`after ${times(state)}`}
        y={first + gap}
      />
      <SettingRow {...common} {...other} id={id('other')} name="other band" y={first + 2 * gap} />
    </Sheet>
  );
}

/** The second figure of the lesson `steel-in-the-section`. */
export const figure: Figure = { finding, description, notes, Drawing };
