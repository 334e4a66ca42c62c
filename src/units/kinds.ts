/**
 * The kinds of quantity on the site, and how each of the two unit systems shows them.
 * Units: symbols of unit-table.ts; values elsewhere are SI (turns count whole turns, percent and strain are fractions).
 * Source: common practice, no source, for the choice of unit and the number of digits.
 */

import type { UnitSymbol } from './factors.ts';

/** The two unit systems a reader can choose from. */
export type UnitSystem = 'metric' | 'us';

/** How many digits are shown when no uncertainty is known; `trim` drops zeros at the end. */
export type Rounding =
  | { readonly significant: number; readonly trim?: true }
  | { readonly decimals: number; readonly trim?: true };

/** How one unit system shows a kind; `inputDecimals` is the resolution of an input box in that unit. */
export interface Display {
  readonly unit: UnitSymbol;
  readonly rounding: Rounding;
  readonly inputDecimals: number;
}

/** How each unit system shows one kind of quantity. */
export interface Kind {
  readonly metric: Display;
  readonly us: Display;
}

const three: Rounding = { significant: 3 };
const threeTrimmed: Rounding = { significant: 3, trim: true };
const fourTrimmed: Rounding = { significant: 4, trim: true };

function display(unit: UnitSymbol, inputDecimals: number, rounding: Rounding = three): Display {
  return { unit, rounding, inputDecimals };
}

function kind(metric: Display, us: Display = metric): Kind {
  return { metric, us };
}

/** Every kind by its name. */
export const KINDS = {
  stress: kind(display('MPa', 1), display('psi', 0)),
  modulus: kind(display('GPa', 1, fourTrimmed), display('Mpsi', 2, fourTrimmed)),
  pressure: kind(display('bar', 1), display('psi', 0)),
  length: kind(display('mm', 2, fourTrimmed), display('in', 4, fourTrimmed)),
  longLength: kind(display('m', 3, fourTrimmed), display('in', 2, fourTrimmed)),
  thickness: kind(
    display('mm', 3, { decimals: 3, trim: true }),
    display('in', 4, { decimals: 4, trim: true }),
  ),
  stretch: kind(display('mm', 4, { decimals: 3 }), display('in', 5, { decimals: 4 })),
  fineLength: kind(display('µm', 2), display('thou', 3)),
  force: kind(display('N', 1), display('lbf', 2)),
  torque: kind(display('N·m', 2), display('ft·lbf', 2)),
  inchTorque: kind(display('N·m', 2), display('in·lbf', 1)), // where a wrench has inch-pounds
  angle: kind(display('°', 2, threeTrimmed)),
  turns: kind(display('turn', 3, threeTrimmed)),
  temperatureDifference: kind(display('°C', 2, threeTrimmed), display('°F', 2, threeTrimmed)),
  thermalExpansion: kind(display('µm/(m·°C)', 2), display('µin/(in·°F)', 2)),
  speed: kind(display('m/s', 1), display('ft/min', 0)),
  frequency: kind(display('Hz', 1)),
  rotation: kind(display('r/min', 0)),
  stiffness: kind(display('kN/mm', 3), display('lbf/in', 0)),
  sideStiffness: kind(display('N/mm', 2), display('lbf/in', 1)),
  bendingStiffness: kind(display('N·m²', 4), display('lbf·in²', 1)),
  energy: kind(display('J', 1), display('ft·lbf', 1)),
  power: kind(display('kW', 2), display('hp', 2)),
  mass: kind(display('kg', 3), display('lb', 3)),
  massPerLength: kind(display('kg/m', 4), display('lb/ft', 4)),
  density: kind(display('kg/m³', 0, fourTrimmed), display('lb/in³', 4)),
  area: kind(display('mm²', 2), display('in²', 5)),
  secondMoment: kind(display('mm⁴', 3), display('in⁴', 9)),
  ratio: kind(display('', 4, threeTrimmed)),
  percent: kind(display('%', 2, threeTrimmed)),
  strain: kind(display('microstrain', 1)),
  count: kind(display('', 0, { decimals: 0 })),
  time: kind(display('s', 2)),
  lengthPerTurn: kind(display('mm/turn', 3, fourTrimmed), display('in/turn', 4, fourTrimmed)),
  stressPerTurn: kind(display('MPa/turn', 1), display('psi/turn', 0)),
  stressPerTorque: kind(display('MPa/(N·m)', 3), display('psi/(ft·lbf)', 1)),
  stressPerTemperature: kind(display('MPa/°C', 3), display('psi/°F', 1)),
} as const satisfies Record<string, Kind>;

/** The name of a kind of quantity. */
export type QuantityKind = keyof typeof KINDS;

/** The names of all kinds, in the order of the table. */
export const QUANTITY_KINDS = Object.keys(KINDS) as readonly QuantityKind[];

/** How a unit system shows a kind. */
export function displayOf(kindName: QuantityKind, system: UnitSystem): Display {
  return KINDS[kindName][system];
}
