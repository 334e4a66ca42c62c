/**
 * What people call the units: spoken names and other spellings.
 * Units: `factor` is SI per unit. Source: common practice, no source, for the spellings; symbols after NIST Special Publication 811.
 * Spellings are compared after case, dots, hyphens and spaces are dropped (lookup.ts), so only others are listed.
 */
import type { Factor } from '../conversions.ts';
import { FACTORS, type UnitSymbol } from '../factors.ts';

/** Names of a unit: `one` and `many` are spoken, `spellings` what people type besides symbol and names. */
interface Names {
  readonly one: string;
  readonly many: string;
  readonly spellings: readonly string[];
}

/** One unit. */
export interface Unit extends Names {
  readonly factor: Factor;
}

function names(one: string, many: string, spellings = ''): Names {
  return { one, many, spellings: spellings.split(', ').filter(Boolean) };
}

const NAMES: Readonly<Record<UnitSymbol, Names>> = {
  '': names('', ''),
  '%': names('percent', 'percent', 'per cent, pct'),
  microstrain: names('microstrain', 'microstrain', 'µε, ue, µm/m, um/m, µin/in, uin/in'),
  'mm/m': names('millimeter per meter', 'millimeters per meter'),

  m: names('meter', 'meters'),
  cm: names('centimeter', 'centimeters'),
  mm: names('millimeter', 'millimeters'),
  µm: names('micrometer', 'micrometers', 'um, micron, microns'),
  in: names('inch', 'inches', '", ins'),
  ft: names('foot', 'feet', "'"),
  thou: names(
    'thousandth of an inch',
    'thousandths of an inch',
    'thousandth, thousandths, thous, mil, mils',
  ),

  'mm²': names('square millimeter', 'square millimeters', 'sq mm'),
  'cm²': names('square centimeter', 'square centimeters', 'sq cm'),
  'm²': names('square meter', 'square meters', 'sq m'),
  'in²': names('square inch', 'square inches', 'sq in'),
  'mm⁴': names('millimeter to the fourth', 'millimeters to the fourth'),
  'in⁴': names('inch to the fourth', 'inches to the fourth'),

  kg: names('kilogram', 'kilograms', 'kgs, kilo, kilos'),
  g: names('gram', 'grams'),
  lb: names('pound', 'pounds', 'lbs, lbm, #'),
  oz: names('ounce', 'ounces'),

  N: names('newton', 'newtons'),
  kN: names('kilonewton', 'kilonewtons'),
  kgf: names('kilogram-force', 'kilograms-force', 'kp, kilopond'),
  lbf: names('pound-force', 'pounds-force', 'lb, lbs, pound, pounds, #'),

  N·m: names('newton-meter', 'newton-meters', 'newtons meters'),
  kgf·m: names('kilogram-force meter', 'kilogram-force meters', 'kg·m, m·kg, m·kgf, kp·m'),
  ft·lbf: names(
    'foot-pound',
    'foot-pounds',
    'ft·lb, ft·lbs, lb·ft, lbs·ft, lbf·ft, pound-foot, pound-feet, foot-pound-force',
  ),
  in·lbf: names(
    'inch-pound',
    'inch-pounds',
    'in·lb, in·lbs, lb·in, lbs·in, lbf·in, pound-inch, pound-inches',
  ),

  Pa: names('pascal', 'pascals'),
  kPa: names('kilopascal', 'kilopascals'),
  MPa: names('megapascal', 'megapascals', 'N/mm², N/sq mm, MN/m²'),
  GPa: names('gigapascal', 'gigapascals', 'kN/mm²'),
  bar: names('bar', 'bar', 'bars'),
  'kgf/mm²': names(
    'kilogram-force per square millimeter',
    'kilograms-force per square millimeter',
    'kg/mm², kp/mm²',
  ),
  psi: names(
    'pound per square inch',
    'pounds per square inch',
    'lbf/in², lb/in², lbs/in², lb/sq in, lbs/sq in',
  ),
  ksi: names('thousand pounds per square inch', 'thousand pounds per square inch', 'kpsi, kip/in²'),
  Mpsi: names(
    'million pounds per square inch',
    'million pounds per square inch',
    'msi, million psi',
  ),

  '°': names('degree', 'degrees', 'deg, degs'),
  rad: names('radian', 'radians', 'rads'),
  turn: names('turn', 'turns', 'rev, revs, revolution, revolutions'),
  '° of turn': names('degree of turn', 'degrees of turn', '°, deg, degs, degree, degrees'),
  '°C': names('degree Celsius', 'degrees Celsius', 'C, deg C, K, kelvin, kelvins, Celsius'),
  '°F': names('degree Fahrenheit', 'degrees Fahrenheit', 'F, deg F, Fahrenheit'),

  s: names('second', 'seconds', 'sec, secs'),
  min: names('minute', 'minutes', 'mins'),
  h: names('hour', 'hours', 'hr, hrs'),
  Hz: names('hertz', 'hertz', 'cps'),
  'r/min': names('turn per minute', 'turns per minute', 'rpm, rev/min'),
  'm/s': names('meter per second', 'meters per second', 'mps'),
  'm/min': names('meter per minute', 'meters per minute'),
  'km/h': names('kilometer per hour', 'kilometers per hour', 'kmh, kph'),
  'ft/s': names('foot per second', 'feet per second', 'fps'),
  'ft/min': names('foot per minute', 'feet per minute', 'fpm, sfpm, sfm'),
  mph: names('mile per hour', 'miles per hour'),

  'kN/mm': names('kilonewton per millimeter', 'kilonewtons per millimeter', 'MN/m'),
  'N/mm': names('newton per millimeter', 'newtons per millimeter', 'kN/m'),
  'N/m': names('newton per meter', 'newtons per meter'),
  'lbf/in': names(
    'pound-force per inch',
    'pounds-force per inch',
    'lb/in, lbs/in, pounds per inch',
  ),

  J: names('joule', 'joules', 'N·m'),
  kJ: names('kilojoule', 'kilojoules'),
  W: names('watt', 'watts'),
  kW: names('kilowatt', 'kilowatts'),
  hp: names('horsepower', 'horsepower'),

  'kg/m': names('kilogram per meter', 'kilograms per meter'),
  'g/m': names('gram per meter', 'grams per meter'),
  'lb/ft': names('pound per foot', 'pounds per foot', 'lbs/ft'),
  'kg/m³': names('kilogram per cubic meter', 'kilograms per cubic meter'),
  'g/cm³': names('gram per cubic centimeter', 'grams per cubic centimeter'),
  'lb/in³': names('pound per cubic inch', 'pounds per cubic inch', 'lbs/in³'),

  'N·m²': names('newton square meter', 'newton square meters'),
  'lbf·in²': names('pound-force square inch', 'pound-force square inches', 'lb·in²'),
  'µm/(m·°C)': names(
    'micrometer per meter per degree Celsius',
    'micrometers per meter per degree Celsius',
    'µm/m/°C, µm/m/K, µm/(m·K), ppm/K, ppm/°C',
  ),
  'µin/(in·°F)': names(
    'microinch per inch per degree Fahrenheit',
    'microinches per inch per degree Fahrenheit',
    'µin/in/°F, ppm/°F',
  ),

  'mm/turn': names('millimeter per turn', 'millimeters per turn', 'mm/rev, mm'),
  'in/turn': names('inch per turn', 'inches per turn', 'in/rev, in, "'),
  'MPa/turn': names('megapascal per turn', 'megapascals per turn', 'MPa/rev'),
  'psi/turn': names('pound per square inch per turn', 'pounds per square inch per turn', 'psi/rev'),
  'MPa/(N·m)': names('megapascal per newton-meter', 'megapascals per newton-meter', 'MPa/N·m'),
  'psi/(ft·lbf)': names(
    'pound per square inch per foot-pound',
    'pounds per square inch per foot-pound',
    'psi/ft·lbf, psi/ft·lb, psi/lb·ft',
  ),
  'MPa/°C': names('megapascal per degree Celsius', 'megapascals per degree Celsius', 'MPa/K'),
  'psi/°F': names(
    'pound per square inch per degree Fahrenheit',
    'pounds per square inch per degree Fahrenheit',
  ),
};

/** Every unit by its symbol. */
export const UNITS = Object.fromEntries(
  Object.entries(NAMES).map(([symbol, named]) => [
    symbol,
    { ...named, factor: FACTORS[symbol as UnitSymbol] },
  ]),
) as Readonly<Record<UnitSymbol, Unit>>;
