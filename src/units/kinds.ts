/**
 * The kinds of quantity on the site: what a box of each kind takes, and how each of the two unit systems shows it.
 * Units: symbols of unit-table.ts; values elsewhere are SI (turns count whole turns, percent and strain are fractions).
 * Source: common practice, no source, for the choice of unit and the number of digits.
 */

import type { UnitSymbol } from './factors.ts';
import type { DimensionName } from './reading/dimensions.ts';

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
  readonly example: string;
}

/** One kind of quantity; `whole` kinds take whole numbers only. */
export interface Kind {
  readonly noun: string; // with its article, for "this box takes …"
  readonly dimension: DimensionName;
  readonly metric: Display;
  readonly us: Display;
  readonly whole?: true;
}

const three: Rounding = { significant: 3 };
const threeTrimmed: Rounding = { significant: 3, trim: true };
const four: Rounding = { significant: 4 };
const fourTrimmed: Rounding = { significant: 4, trim: true };

function display(
  example: string,
  unit: UnitSymbol,
  inputDecimals: number,
  rounding: Rounding = three,
): Display {
  return { unit, rounding, inputDecimals, example };
}

function kind(noun: string, dimension: DimensionName, metric: Display, us: Display = metric): Kind {
  return { noun, dimension, metric, us };
}

/** Every kind by its name. */
export const KINDS = {
  stress: kind('a stress', 'stress', display('120 MPa', 'MPa', 1), display('17400 psi', 'psi', 0)),
  modulus: kind(
    "a Young's modulus",
    'stress',
    display('205 GPa', 'GPa', 1),
    display('29.7 Mpsi', 'Mpsi', 2),
  ),
  pressure: kind(
    'a pressure',
    'stress',
    display('130 bar', 'bar', 1),
    display('1900 psi', 'psi', 0),
  ),
  length: kind(
    'a length',
    'length',
    display('35 mm', 'mm', 2, fourTrimmed),
    display('1 3/8 in', 'in', 4, fourTrimmed),
  ),
  longLength: kind(
    'a length',
    'length',
    display('4.01 m', 'm', 3, fourTrimmed),
    display('158 1/2 in', 'in', 2, fourTrimmed),
  ),
  thickness: kind(
    'a thickness',
    'length',
    display('1.1 mm', 'mm', 3, { decimals: 3, trim: true }),
    display('.042 in', 'in', 4, { decimals: 4, trim: true }),
  ),
  stretch: kind(
    'a stretch or dial reading',
    'length',
    display('0.293 mm', 'mm', 4, { decimals: 3 }),
    display('.0115 in', 'in', 5, { decimals: 4 }),
  ),
  fineLength: kind(
    'a small length',
    'length',
    display('12 µm', 'µm', 2),
    display('0.5 thou', 'thou', 3),
  ),
  force: kind(
    'a force',
    'force',
    display('6500 N', 'N', 1, four),
    display('1460 lbf', 'lbf', 2, four),
  ),
  torque: kind(
    'a torque',
    'torque',
    display('27 N·m', 'N·m', 2),
    display('20 ft·lbf', 'ft·lbf', 2),
  ),
  angle: kind('an angle', 'angle', display('14.5°', '°', 2, threeTrimmed)),
  turns: kind('a number of turns', 'turns', display('1 1/4 turns', 'turn', 3, threeTrimmed)),
  temperatureDifference: kind(
    'a temperature difference',
    'temperatureDifference',
    display('3 °C', '°C', 2, threeTrimmed),
    display('5 °F', '°F', 2, threeTrimmed),
  ),
  thermalExpansion: kind(
    'a thermal expansion',
    'thermalExpansion',
    display('11.5 µm/(m·°C)', 'µm/(m·°C)', 2),
    display('6.4 µin/(in·°F)', 'µin/(in·°F)', 2),
  ),
  speed: kind('a speed', 'speed', display('25 m/s', 'm/s', 1), display('5000 ft/min', 'ft/min', 0)),
  frequency: kind('a frequency', 'frequency', display('108 Hz', 'Hz', 1)),
  rotation: kind('a speed of rotation', 'rotation', display('950 r/min', 'r/min', 0)),
  stiffness: kind(
    'a stiffness',
    'stiffness',
    display('8 kN/mm', 'kN/mm', 3),
    display('45700 lbf/in', 'lbf/in', 0),
  ),
  sideStiffness: kind(
    'a stiffness',
    'stiffness',
    display('25 N/mm', 'N/mm', 2),
    display('143 lbf/in', 'lbf/in', 1),
  ),
  bendingStiffness: kind(
    'a bending stiffness',
    'bendingStiffness',
    display('0.75 N·m²', 'N·m²', 4),
    display('260 lbf·in²', 'lbf·in²', 1),
  ),
  energy: kind('an energy', 'energy', display('60 J', 'J', 1), display('44 ft·lbf', 'ft·lbf', 1)),
  power: kind('a power', 'power', display('10 kW', 'kW', 2), display('13 hp', 'hp', 2)),
  mass: kind('a mass', 'mass', display('1.2 kg', 'kg', 3), display('2.6 lb', 'lb', 3)),
  massPerLength: kind(
    'a mass per length',
    'massPerLength',
    display('0.251 kg/m', 'kg/m', 4),
    display('0.169 lb/ft', 'lb/ft', 4),
  ),
  density: kind(
    'a density',
    'density',
    display('7850 kg/m³', 'kg/m³', 0, fourTrimmed),
    display('0.284 lb/in³', 'lb/in³', 4),
  ),
  area: kind('an area', 'area', display('38.5 mm²', 'mm²', 2), display('0.0597 in²', 'in²', 5)),
  secondMoment: kind(
    'a second moment of area',
    'secondMoment',
    display('3.9 mm⁴', 'mm⁴', 3),
    display('9.4e-6 in⁴', 'in⁴', 9),
  ),
  ratio: kind('a plain number', 'ratio', display('0.15', '', 4, threeTrimmed)),
  percent: kind('a percentage', 'ratio', display('7 %', '%', 2, threeTrimmed)),
  strain: kind('a strain', 'ratio', display('585 microstrain', 'microstrain', 1)),
  count: {
    ...kind('a whole number', 'number', display('10', '', 0, { decimals: 0 })),
    whole: true,
  },
  time: kind('a time', 'time', display('2.5 s', 's', 2)),
  lengthPerTurn: kind(
    'a length per turn',
    'lengthPerTurn',
    display('2.5 mm/turn', 'mm/turn', 3, fourTrimmed),
    display('0.1 in/turn', 'in/turn', 4, fourTrimmed),
  ),
  stressPerTurn: kind(
    'a stress per turn',
    'stressPerTurn',
    display('250 MPa/turn', 'MPa/turn', 1),
    display('36000 psi/turn', 'psi/turn', 0),
  ),
  stressPerTorque: kind(
    'a stress per torque',
    'stressPerTorque',
    display('5 MPa/(N·m)', 'MPa/(N·m)', 3),
    display('980 psi/(ft·lbf)', 'psi/(ft·lbf)', 1),
  ),
  stressPerTemperature: kind(
    'a stress per degree',
    'stressPerTemperature',
    display('2.36 MPa/°C', 'MPa/°C', 3),
    display('190 psi/°F', 'psi/°F', 1),
  ),
} as const satisfies Record<string, Kind>;

/** The name of a kind of quantity. */
export type QuantityKind = keyof typeof KINDS;

/** The names of all kinds, in the order of the table. */
export const QUANTITY_KINDS = Object.keys(KINDS) as readonly QuantityKind[];

/** How a unit system shows a kind. */
export function displayOf(kindName: QuantityKind, system: UnitSystem): Display {
  return KINDS[kindName][system];
}
