/**
 * The units a reader may type or see: symbol, spoken names, factor to SI and other spellings.
 * Units: `factor` is SI per unit. Source: conversions.ts; symbols after NIST Special Publication 811.
 * Spellings are compared after case, dots, hyphens and spaces are dropped (unit-lookup.ts), so only others are listed.
 */
import {
  degree,
  degreeFahrenheit,
  type Factor,
  foot,
  footPoundForce,
  horsepower,
  inch,
  kilo,
  kilogramForce,
  mile,
  milli,
  over,
  pound,
  poundForce,
  psi,
  si,
  times,
} from './conversions.ts';

/** One unit; `one` and `many` are its spoken names, `spellings` what people type besides symbol and names. */
export interface Unit {
  readonly one: string;
  readonly many: string;
  readonly factor: Factor;
  readonly spellings: readonly string[];
}

function unit(one: string, many: string, toSi: Factor, spellings = ''): Unit {
  return { one, many, factor: toSi, spellings: spellings.split(', ').filter(Boolean) };
}

const micro: Factor = [1, 1e6];
const squareMillimetre: Factor = [1, 1e6];
const minute: Factor = [60, 1];
const ksi = kilo(psi);

/** Every unit by its symbol. */
export const UNITS = {
  '': unit('', '', si),
  '%': unit('percent', 'percent', [1, 100], 'per cent, pct'),
  microstrain: unit('microstrain', 'microstrain', micro, 'µε, ue, µm/m, um/m, µin/in, uin/in'),
  'mm/m': unit('millimetre per metre', 'millimetres per metre', [1, 1e3]),

  m: unit('metre', 'metres', si),
  cm: unit('centimetre', 'centimetres', [1, 100]),
  mm: unit('millimetre', 'millimetres', [1, 1e3]),
  µm: unit('micrometre', 'micrometres', micro, 'um, micron, microns'),
  in: unit('inch', 'inches', inch, '", ins'),
  ft: unit('foot', 'feet', foot, "'"),
  thou: unit(
    'thousandth of an inch',
    'thousandths of an inch',
    milli(inch),
    'thousandth, thousandths, thous, mil, mils',
  ),

  'mm²': unit('square millimetre', 'square millimetres', squareMillimetre, 'sq mm'),
  'cm²': unit('square centimetre', 'square centimetres', [1, 1e4], 'sq cm'),
  'm²': unit('square metre', 'square metres', si, 'sq m'),
  'in²': unit('square inch', 'square inches', times(inch, inch), 'sq in'),
  'mm⁴': unit('millimetre to the fourth', 'millimetres to the fourth', [1, 1e12]),
  'in⁴': unit(
    'inch to the fourth',
    'inches to the fourth',
    times(times(inch, inch), times(inch, inch)),
  ),

  kg: unit('kilogram', 'kilograms', si, 'kgs, kilo, kilos'),
  g: unit('gram', 'grams', [1, 1e3]),
  lb: unit('pound', 'pounds', pound, 'lbs, lbm, #'),
  oz: unit('ounce', 'ounces', over(pound, [16, 1])),

  N: unit('newton', 'newtons', si),
  kN: unit('kilonewton', 'kilonewtons', kilo(si)),
  kgf: unit('kilogram-force', 'kilograms-force', kilogramForce, 'kp, kilopond'),
  lbf: unit('pound-force', 'pounds-force', poundForce, 'lb, lbs, pound, pounds, #'),

  N·m: unit('newton-metre', 'newton-metres', si, 'newtons metres'),
  kgf·m: unit(
    'kilogram-force metre',
    'kilogram-force metres',
    kilogramForce,
    'kg·m, m·kg, m·kgf, kp·m',
  ),
  ft·lbf: unit(
    'foot-pound',
    'foot-pounds',
    footPoundForce,
    'ft·lb, ft·lbs, lb·ft, lbs·ft, lbf·ft, pound-foot, pound-feet, foot-pound-force',
  ),
  in·lbf: unit(
    'inch-pound',
    'inch-pounds',
    times(poundForce, inch),
    'in·lb, in·lbs, lb·in, lbs·in, lbf·in, pound-inch, pound-inches',
  ),

  Pa: unit('pascal', 'pascals', si),
  kPa: unit('kilopascal', 'kilopascals', kilo(si)),
  MPa: unit('megapascal', 'megapascals', [1e6, 1], 'N/mm², N/sq mm, MN/m²'),
  GPa: unit('gigapascal', 'gigapascals', [1e9, 1], 'kN/mm²'),
  bar: unit('bar', 'bar', [1e5, 1], 'bars'),
  'kgf/mm²': unit(
    'kilogram-force per square millimetre',
    'kilograms-force per square millimetre',
    over(kilogramForce, squareMillimetre),
    'kg/mm², kp/mm²',
  ),
  psi: unit(
    'pound per square inch',
    'pounds per square inch',
    psi,
    'lbf/in², lb/in², lbs/in², lb/sq in, lbs/sq in',
  ),
  ksi: unit(
    'thousand pounds per square inch',
    'thousand pounds per square inch',
    ksi,
    'kpsi, kip/in²',
  ),
  Mpsi: unit(
    'million pounds per square inch',
    'million pounds per square inch',
    kilo(ksi),
    'msi, million psi',
  ),

  '°': unit('degree', 'degrees', degree, 'deg, degs'),
  rad: unit('radian', 'radians', si, 'rads'),
  turn: unit('turn', 'turns', si, 'rev, revs, revolution, revolutions'),
  '° of turn': unit('degree of turn', 'degrees of turn', [1, 360], '°, deg, degs, degree, degrees'),
  '°C': unit('degree Celsius', 'degrees Celsius', si, 'C, deg C, K, kelvin, kelvins, Celsius'),
  '°F': unit('degree Fahrenheit', 'degrees Fahrenheit', degreeFahrenheit, 'F, deg F, Fahrenheit'),

  s: unit('second', 'seconds', si, 'sec, secs'),
  min: unit('minute', 'minutes', minute, 'mins'),
  h: unit('hour', 'hours', [3600, 1], 'hr, hrs'),
  Hz: unit('hertz', 'hertz', si, 'cps'),
  'r/min': unit('turn per minute', 'turns per minute', over(si, minute), 'rpm, rev/min'),
  'm/s': unit('metre per second', 'metres per second', si, 'mps'),
  'm/min': unit('metre per minute', 'metres per minute', over(si, minute)),
  'km/h': unit('kilometre per hour', 'kilometres per hour', [1e3, 3600], 'kmh, kph'),
  'ft/s': unit('foot per second', 'feet per second', foot, 'fps'),
  'ft/min': unit('foot per minute', 'feet per minute', over(foot, minute), 'fpm, sfpm, sfm'),
  mph: unit('mile per hour', 'miles per hour', over(mile, [3600, 1])),

  'kN/mm': unit('kilonewton per millimetre', 'kilonewtons per millimetre', [1e6, 1], 'MN/m'),
  'N/mm': unit('newton per millimetre', 'newtons per millimetre', kilo(si), 'kN/m'),
  'N/m': unit('newton per metre', 'newtons per metre', si),
  'lbf/in': unit(
    'pound-force per inch',
    'pounds-force per inch',
    over(poundForce, inch),
    'lb/in, lbs/in, pounds per inch',
  ),

  J: unit('joule', 'joules', si, 'N·m'),
  kJ: unit('kilojoule', 'kilojoules', kilo(si)),
  W: unit('watt', 'watts', si),
  kW: unit('kilowatt', 'kilowatts', kilo(si)),
  hp: unit('horsepower', 'horsepower', horsepower),

  'kg/m': unit('kilogram per metre', 'kilograms per metre', si),
  'g/m': unit('gram per metre', 'grams per metre', [1, 1e3]),
  'lb/ft': unit('pound per foot', 'pounds per foot', over(pound, foot), 'lbs/ft'),
  'kg/m³': unit('kilogram per cubic metre', 'kilograms per cubic metre', si),
  'g/cm³': unit('gram per cubic centimetre', 'grams per cubic centimetre', kilo(si)),
  'lb/in³': unit(
    'pound per cubic inch',
    'pounds per cubic inch',
    over(pound, times(inch, times(inch, inch))),
    'lbs/in³',
  ),

  'N·m²': unit('newton square metre', 'newton square metres', si),
  'lbf·in²': unit(
    'pound-force square inch',
    'pound-force square inches',
    times(poundForce, times(inch, inch)),
    'lb·in²',
  ),
  'µm/(m·°C)': unit(
    'micrometre per metre per degree Celsius',
    'micrometres per metre per degree Celsius',
    micro,
    'µm/m/°C, µm/m/K, µm/(m·K), ppm/K, ppm/°C',
  ),
  'µin/(in·°F)': unit(
    'microinch per inch per degree Fahrenheit',
    'microinches per inch per degree Fahrenheit',
    over(micro, degreeFahrenheit),
    'µin/in/°F, ppm/°F',
  ),

  'mm/turn': unit('millimetre per turn', 'millimetres per turn', [1, 1e3], 'mm/rev, mm'),
  'in/turn': unit('inch per turn', 'inches per turn', inch, 'in/rev, in, "'),
  'MPa/turn': unit('megapascal per turn', 'megapascals per turn', [1e6, 1], 'MPa/rev'),
  'psi/turn': unit(
    'pound per square inch per turn',
    'pounds per square inch per turn',
    psi,
    'psi/rev',
  ),
  'MPa/(N·m)': unit(
    'megapascal per newton-metre',
    'megapascals per newton-metre',
    [1e6, 1],
    'MPa/N·m',
  ),
  'psi/(ft·lbf)': unit(
    'pound per square inch per foot-pound',
    'pounds per square inch per foot-pound',
    over(psi, footPoundForce),
    'psi/ft·lbf, psi/ft·lb, psi/lb·ft',
  ),
  'MPa/°C': unit(
    'megapascal per degree Celsius',
    'megapascals per degree Celsius',
    [1e6, 1],
    'MPa/K',
  ),
  'psi/°F': unit(
    'pound per square inch per degree Fahrenheit',
    'pounds per square inch per degree Fahrenheit',
    over(psi, degreeFahrenheit),
  ),
} as const satisfies Record<string, Unit>;

/** The symbol of a unit in `UNITS`. */
export type UnitSymbol = keyof typeof UNITS;
