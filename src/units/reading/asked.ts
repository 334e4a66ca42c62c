/**
 * What a box of each kind of quantity takes: what it is called, its dimension, and an example in either unit system.
 * Units: symbols of factors.ts. Source: common practice, no source, for the examples.
 */
import type { QuantityKind } from '../kinds.ts';
import type { DimensionName } from './dimensions.ts';

/** What a box asks for; `whole` ones take whole numbers only. */
export interface Asked {
  readonly noun: string; // with its article, for "this box takes …"
  readonly dimension: DimensionName;
  readonly metric: string;
  readonly us: string;
  readonly whole?: true;
}

function asked(noun: string, dimension: DimensionName, metric: string, us = metric): Asked {
  return { noun, dimension, metric, us };
}

/** What is asked for, by kind. */
export const ASKED: Readonly<Record<QuantityKind, Asked>> = {
  stress: asked('a stress', 'stress', '120 MPa', '17400 psi'),
  modulus: asked("a Young's modulus", 'stress', '205 GPa', '29.7 Mpsi'),
  pressure: asked('a pressure', 'stress', '130 bar', '1900 psi'),
  length: asked('a length', 'length', '35 mm', '1 3/8 in'),
  longLength: asked('a length', 'length', '4.01 m', '158 1/2 in'),
  thickness: asked('a thickness', 'length', '1.1 mm', '.042 in'),
  stretch: asked('a stretch or dial reading', 'length', '0.293 mm', '.0115 in'),
  fineLength: asked('a small length', 'length', '12 µm', '0.5 thou'),
  force: asked('a force', 'force', '6500 N', '1460 lbf'),
  torque: asked('a torque', 'torque', '27 N·m', '20 ft·lbf'),
  inchTorque: asked('a torque', 'torque', '27 N·m', '240 in·lbf'),
  angle: asked('an angle', 'angle', '14.5°'),
  turns: asked('a number of turns', 'turns', '1 1/4 turns'),
  temperatureDifference: asked('a temperature difference', 'temperatureDifference', '3 °C', '5 °F'),
  thermalExpansion: asked(
    'a thermal expansion',
    'thermalExpansion',
    '11.5 µm/(m·°C)',
    '6.4 µin/(in·°F)',
  ),
  speed: asked('a speed', 'speed', '25 m/s', '5000 ft/min'),
  frequency: asked('a frequency', 'frequency', '108 Hz'),
  rotation: asked('a speed of rotation', 'rotation', '950 r/min'),
  stiffness: asked('a stiffness', 'stiffness', '8 kN/mm', '45700 lbf/in'),
  sideStiffness: asked('a stiffness', 'stiffness', '25 N/mm', '143 lbf/in'),
  bendingStiffness: asked('a bending stiffness', 'bendingStiffness', '0.75 N·m²', '260 lbf·in²'),
  energy: asked('an energy', 'energy', '60 J', '44 ft·lbf'),
  power: asked('a power', 'power', '10 kW', '13 hp'),
  mass: asked('a mass', 'mass', '1.2 kg', '2.6 lb'),
  massPerLength: asked('a mass per length', 'massPerLength', '0.251 kg/m', '0.169 lb/ft'),
  density: asked('a density', 'density', '7850 kg/m³', '0.284 lb/in³'),
  area: asked('an area', 'area', '38.5 mm²', '0.0597 in²'),
  secondMoment: asked('a second moment of area', 'secondMoment', '3.9 mm⁴', '9.4e-6 in⁴'),
  ratio: asked('a plain number', 'ratio', '0.15'),
  percent: asked('a percentage', 'ratio', '7 %'),
  strain: asked('a strain', 'ratio', '585 microstrain'),
  count: { ...asked('a whole number', 'number', '10'), whole: true },
  time: asked('a time', 'time', '2.5 s'),
  lengthPerTurn: asked('a length per turn', 'lengthPerTurn', '2.5 mm/turn', '0.1 in/turn'),
  stressPerTurn: asked('a stress per turn', 'stressPerTurn', '250 MPa/turn', '36000 psi/turn'),
  stressPerTorque: asked(
    'a stress per torque',
    'stressPerTorque',
    '5 MPa/(N·m)',
    '980 psi/(ft·lbf)',
  ),
  stressPerTemperature: asked(
    'a stress per degree',
    'stressPerTemperature',
    '2.36 MPa/°C',
    '190 psi/°F',
  ),
};
