/**
 * Torque by efficiency: what thrust, or what stress in each strand, a torque on the handle is, as a table that is
 * also a field of colour, with the reader's screw and its doubt marked.
 * Units: SI in the state.
 */

import { screwSpreads, threadFrictionHalfWidth } from '../../core/assumptions.ts';
import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { quantity } from '../../models/define-model.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';
import { screwTakesItsCut } from './model.ts';
import { ThrustTable } from './table/ThrustTable.tsx';

function shownKind({ values }: FigureState) {
  return values['shown'] === 0
    ? ({ name: 'thrust', kind: 'force', words: 'of thrust' } as const)
    : ({ name: 'stress', kind: 'stress', words: 'in each strand' } as const);
}

function finding(state: FigureState): string {
  const { values, system } = state;
  const { name, kind, words } = shownKind(state);
  const torque = formatQuantity(values['torque'] ?? 0, 'torque', system);
  const value = formatQuantity(values[name] ?? 0, kind, system, { digits: 2 });
  const range = formatRange(values[`${name}Low`] ?? 0, values[`${name}High`] ?? 0, kind, system);
  return `${torque} is about ${value} ${words}. As friction is only guessed, it may be ${range}.`;
}

function description(state: FigureState): string {
  const { values, system } = state;
  const range = formatRange(
    values['efficiencyLow'] ?? 0,
    values['efficiencyHigh'] ?? 0,
    'percent',
    system,
  );
  return `Rows are torques above drag, columns are efficiencies. Your own torque and efficiency stand among them; the cells of your row that an efficiency of ${range} reaches are marked.`;
}

function notes({ values, system }: FigureState): readonly string[] {
  const area = formatQuantity(values['area'] ?? 0, 'area', system);
  const share = (value: number) => formatQuantity(value, 'percent', system);
  return [
    `rows: ${quantity(screwTakesItsCut, 'torque').label}`,
    `columns: ${quantity(screwTakesItsCut, 'efficiency').label}`,
    'framed thick: your screw; framed thin: what its friction may make of it',
    `friction guessed: thread ± ${threadFrictionHalfWidth}, collar ± ${share(screwSpreads.collarFriction)}`,
    `screw in line with the wheel, two strands of ${area}`,
    'the stronger the colour, the larger the number',
  ];
}

const Drawing = (state: FigureState) => <ThrustTable state={state} />;

/** The third figure of the lesson `screw-takes-its-cut`. */
export const figure: FigureModule = { finding, description, notes, Drawing };
