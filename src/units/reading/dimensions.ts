/**
 * Which units measure the same thing: a typed unit is accepted where its dimension fits the box.
 * Units: symbols of unit-table.ts. Source: definition. A box for force also takes `lb`, as people write it for pounds-force.
 */
import type { UnitSymbol } from '../factors.ts';

interface Dimension {
  readonly noun: string; // with its article, for "… is a length"
  readonly units: readonly UnitSymbol[];
}

/** Dimensions in the order in which an out-of-place unit is looked for: the commonest meaning first. */
export const DIMENSIONS = {
  length: { noun: 'a length', units: ['mm', 'cm', 'm', 'µm', 'in', 'ft', 'thou'] },
  mass: { noun: 'a mass', units: ['kg', 'g', 'lb', 'oz'] },
  force: { noun: 'a force', units: ['N', 'kN', 'lbf', 'kgf'] },
  torque: { noun: 'a torque', units: ['N·m', 'ft·lbf', 'in·lbf', 'kgf·m'] },
  stress: {
    noun: 'a stress or pressure',
    units: ['MPa', 'GPa', 'kPa', 'Pa', 'bar', 'kgf/mm²', 'psi', 'ksi', 'Mpsi'],
  },
  energy: { noun: 'an energy', units: ['J', 'kJ', 'ft·lbf'] },
  power: { noun: 'a power', units: ['kW', 'W', 'hp'] },
  angle: { noun: 'an angle', units: ['°', 'rad'] },
  turns: { noun: 'a number of turns', units: ['turn', '° of turn'] },
  temperatureDifference: { noun: 'a temperature', units: ['°C', '°F'] },
  time: { noun: 'a time', units: ['s', 'min', 'h'] },
  frequency: { noun: 'a frequency', units: ['Hz'] },
  rotation: { noun: 'a speed of rotation', units: ['r/min'] },
  speed: { noun: 'a speed', units: ['m/s', 'm/min', 'km/h', 'ft/min', 'ft/s', 'mph'] },
  area: { noun: 'an area', units: ['mm²', 'cm²', 'm²', 'in²'] },
  stiffness: { noun: 'a stiffness', units: ['kN/mm', 'N/mm', 'N/m', 'lbf/in'] },
  massPerLength: { noun: 'a mass per length', units: ['kg/m', 'g/m', 'lb/ft'] },
  density: { noun: 'a density', units: ['kg/m³', 'g/cm³', 'lb/in³'] },
  secondMoment: { noun: 'a second moment of area', units: ['mm⁴', 'in⁴'] },
  bendingStiffness: { noun: 'a bending stiffness', units: ['N·m²', 'lbf·in²'] },
  thermalExpansion: { noun: 'a thermal expansion', units: ['µm/(m·°C)', 'µin/(in·°F)'] },
  ratio: { noun: 'a ratio', units: ['', '%', 'microstrain', 'mm/m'] },
  number: { noun: 'a plain number', units: [''] },
  lengthPerTurn: { noun: 'a length per turn', units: ['mm/turn', 'in/turn'] },
  stressPerTurn: { noun: 'a stress per turn', units: ['MPa/turn', 'psi/turn'] },
  stressPerTorque: { noun: 'a stress per torque', units: ['MPa/(N·m)', 'psi/(ft·lbf)'] },
  stressPerTemperature: { noun: 'a stress per degree', units: ['MPa/°C', 'psi/°F'] },
} as const satisfies Record<string, Dimension>;

/** The name of a dimension. */
export type DimensionName = keyof typeof DIMENSIONS;
