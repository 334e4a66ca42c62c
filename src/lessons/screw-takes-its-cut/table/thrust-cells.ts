/**
 * The cells of the table of torque by efficiency: round torques in the reader's unit, efficiencies in even steps, and
 * in place of the nearest of each the reader's own.
 * Units: SI; the shown numbers are in thousands of the reader's unit of force or stress.
 */

import { wheelForceFromTorque } from '../../../core/screw.ts';
import { strandForceAtWheel, strandStress } from '../../../core/section.ts';
import { formatNumber } from '../../../units/format-number.ts';
import type { QuantityKind, UnitSystem } from '../../../units/kinds.ts';
import { unitLabel } from '../../../units/label.ts';
import { fromSi, toSi } from '../../../units/si-value.ts';
import type { State } from '../state.ts';

type Values = State['values'];

const EFFICIENCIES = [0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45] as const;

const TORQUES: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [5, 10, 15, 20, 30, 40, 50, 60, 80],
  us: [4, 8, 12, 16, 20, 30, 40, 50, 60],
};

/** What the cells hold: a quantity, and by how much its shown unit is divided. */
export interface CellQuantity {
  readonly name: 'thrust' | 'stress';
  readonly kind: QuantityKind;
  readonly divisor: number;
  readonly unit: string;
}

/** Thrust in kN or thousands of lbf; stress in MPa or thousands of psi. */
export function cellQuantity({ shown }: Pick<Values, 'shown'>, system: UnitSystem): CellQuantity {
  if (shown === 'thrust') {
    const unit = system === 'metric' ? 'kN' : '1000 lbf';
    return { name: 'thrust', kind: 'force', divisor: 1000, unit };
  }
  const inThousands = system === 'us';
  const label = unitLabel('stress', system);
  return {
    name: 'stress',
    kind: 'stress',
    divisor: inThousands ? 1000 : 1,
    unit: inThousands ? `1000 ${label}` : label,
  };
}

/** A cell's value in SI. */
export function cellValue(
  { lead, area }: Pick<Values, 'lead' | 'area'>,
  { name }: CellQuantity,
  torque: number,
  efficiency: number,
): number {
  const thrust = wheelForceFromTorque({ lead, efficiency, dragTorque: 0 }, torque);
  return name === 'thrust' ? thrust : strandStress(strandForceAtWheel(thrust), area);
}

/** A cell's number as it is written: two digits, for friction allows no more. */
export function cellText(value: number, { kind, divisor }: CellQuantity, system: UnitSystem) {
  return formatNumber(fromSi(value, kind, system) / divisor, { significant: 2 });
}

/** A rising list with the entry nearest to a value, by ratio, put in its place by the value itself. */
function withOwn(list: readonly number[], own: number): readonly number[] {
  const distance = (one: number) => Math.abs(Math.log(one / own));
  const nearest = list.reduce((best, one) => (distance(one) < distance(best) ? one : best));
  return list.map((one) => (one === nearest ? own : one));
}

/** Torques of the rows in N·m, efficiencies of the columns; the reader's own among them. */
export function tableEdges(
  { torque, efficiency }: Pick<Values, 'torque' | 'efficiency'>,
  system: UnitSystem,
) {
  const torques = TORQUES[system].map((one) => toSi(one, 'torque', system));
  return {
    torques: withOwn(torques, torque),
    efficiencies: withOwn(EFFICIENCIES, efficiency),
  };
}

/** The first and the last column that the range of friction allows; the reader's own is always one of them. */
export function reachedColumns(
  efficiencies: readonly number[],
  { efficiencyLow, efficiencyHigh }: Pick<Values, 'efficiencyLow' | 'efficiencyHigh'>,
) {
  const allowed = efficiencies.filter((share) => share >= efficiencyLow && share <= efficiencyHigh);
  return { least: Math.min(...allowed), most: Math.max(...allowed) };
}
