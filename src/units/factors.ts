/**
 * The units a reader may type or see, each with its factor.
 * Units: a factor is SI per unit. Source: conversions.ts; symbols after NIST Special Publication 811.
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

const micro: Factor = [1, 1e6];
const squareMillimetre: Factor = [1, 1e6];
const minute: Factor = [60, 1];
const ksi = kilo(psi);

/** Factor of every unit by its symbol. */
export const FACTORS = {
  '': si,
  '%': [1, 100],
  microstrain: micro,
  'mm/m': [1, 1e3],

  m: si,
  cm: [1, 100],
  mm: [1, 1e3],
  µm: micro,
  in: inch,
  ft: foot,
  thou: milli(inch),

  'mm²': squareMillimetre,
  'cm²': [1, 1e4],
  'm²': si,
  'in²': times(inch, inch),
  'mm⁴': [1, 1e12],
  'in⁴': times(times(inch, inch), times(inch, inch)),

  kg: si,
  g: [1, 1e3],
  lb: pound,
  oz: over(pound, [16, 1]),

  N: si,
  kN: kilo(si),
  kgf: kilogramForce,
  lbf: poundForce,

  N·m: si,
  kgf·m: kilogramForce,
  ft·lbf: footPoundForce,
  in·lbf: times(poundForce, inch),

  Pa: si,
  kPa: kilo(si),
  MPa: [1e6, 1],
  GPa: [1e9, 1],
  bar: [1e5, 1],
  'kgf/mm²': over(kilogramForce, squareMillimetre),
  psi: psi,
  ksi: ksi,
  Mpsi: kilo(ksi),

  '°': degree,
  rad: si,
  turn: si,
  '° of turn': [1, 360],
  '°C': si,
  '°F': degreeFahrenheit,

  s: si,
  min: minute,
  h: [3600, 1],
  Hz: si,
  'r/min': over(si, minute),
  'm/s': si,
  'm/min': over(si, minute),
  'km/h': [1e3, 3600],
  'ft/s': foot,
  'ft/min': over(foot, minute),
  mph: over(mile, [3600, 1]),

  'kN/mm': [1e6, 1],
  'N/mm': kilo(si),
  'N/m': si,
  'lbf/in': over(poundForce, inch),

  J: si,
  kJ: kilo(si),
  W: si,
  kW: kilo(si),
  hp: horsepower,

  'kg/m': si,
  'g/m': [1, 1e3],
  'lb/ft': over(pound, foot),
  'kg/m³': si,
  'g/cm³': kilo(si),
  'lb/in³': over(pound, times(inch, times(inch, inch))),

  'N·m²': si,
  'lbf·in²': times(poundForce, times(inch, inch)),
  'µm/(m·°C)': micro,
  'µin/(in·°F)': over(micro, degreeFahrenheit),

  'mm/turn': [1, 1e3],
  'in/turn': inch,
  'MPa/turn': [1e6, 1],
  'psi/turn': psi,
  'MPa/(N·m)': [1e6, 1],
  'psi/(ft·lbf)': over(psi, footPoundForce),
  'MPa/°C': [1e6, 1],
  'psi/°F': over(psi, degreeFahrenheit),
} as const satisfies Record<string, Factor>;

/** The symbol of a unit in `FACTORS`. */
export type UnitSymbol = keyof typeof FACTORS;
