/**
 * Torque by efficiency: what thrust, or what stress in each strand, a torque on the handle is, as a table that is
 * also a field of colour, with the reader's screw and the range of its friction marked.
 * Units: SI in the state.
 */

import { screwSpreads, threadFrictionHalfWidth } from '../../core/assumptions.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';
import type { Figure, State } from './state.ts';
import { ThrustTable } from './table/ThrustTable.tsx';

function shownKind({ values }: State) {
  return values.shown === 'thrust'
    ? ({ name: 'thrust', kind: 'force', words: 'of thrust' } as const)
    : ({ name: 'stress', kind: 'stress', words: 'in each strand' } as const);
}

function finding(state: State): string {
  const { values, system } = state;
  const { name, kind, words } = shownKind(state);
  const torque = formatQuantity(values.torque, 'torque', system);
  const value = formatQuantity(values[name], kind, system, { digits: 2 });
  const [low, high] = [values[`${name}Low`], values[`${name}High`]].map((end) =>
    formatQuantity(end, kind, system, { digits: 2 }),
  );
  return `${torque} above the no-load torque gives about ${value} ${words}. As friction is only an estimate: ${low} to ${high}.`;
}

function description(state: State): string {
  const { values, system } = state;
  const range = formatRange(values.efficiencyLow, values.efficiencyHigh, 'percent', system);
  return `Rows are torques above the no-load torque, columns are efficiencies. Your own torque and efficiency are among them; the cells of your row that an efficiency of ${range} reaches are marked.`;
}

function notes({ values, system }: State): readonly string[] {
  const area = formatQuantity(values.area, 'area', system);
  const share = (value: number) => formatQuantity(value, 'percent', system);
  return [
    'thick border: your screw; thin border: possible with its friction',
    `friction estimated: thread ± ${threadFrictionHalfWidth}, collar ± ${share(screwSpreads.collarFriction)}`,
    `screw in line with the wheel, two strands of ${area}`,
    'the stronger the color, the larger the number',
  ];
}

const Drawing = (state: State) => <ThrustTable state={state} />;

/** The third figure of the lesson `screw-takes-its-cut`. */
export const figure: Figure = { finding, description, notes, Drawing };
