/**
 * The chain from the handle to the dial on one invented small mill: the numbers of the title page and of the
 * cautions. A trapezoidal screw with a ball bearing under its head pulls the movable wheel in line.
 * Units: SI.
 * Source: exact screw (core/screw), two strands on the wheel (core/section), Hooke's law (core/elasticity), energies
 * (core/energy); the mill is invented, its thread friction is a guess from handbook ranges, from memory.
 */

import { elongation } from '../../core/elasticity.ts';
import {
  coilEnergy,
  coilRadius,
  kineticEnergy,
  loopLengthEqual,
  recoilSpeed,
  stretchEnergy,
  supportEnergy,
} from '../../core/loop.ts';
import { thrustFromTorque } from '../../core/screw.ts';
import { strandForceAtWheel, strandStress } from '../../core/section.ts';
import { massPerLength } from '../../core/span.ts';
import { defineModel, type QuantityOf } from '../define-model.ts';
import type { Ink } from '../words.ts';
import { bandArea, OTTERSLEIGH, screwWith } from './ottersleigh.ts';

/** Stiffness of a long soft spring in the place of none, N/m: what it would hold. */
const SOFT_SPRING = 1e5;

const loopLength = loopLengthEqual(OTTERSLEIGH);

/** Thrust of the screw in N for a torque on its handle in N·m, with a given thread friction. */
const thrustAt = (torque: number, threadFriction: number): number =>
  thrustFromTorque(screwWith(threadFriction), Math.max(0, torque - OTTERSLEIGH.dragTorque));

/** Stress in Pa; the screw pulls in line, so its thrust is the force on the wheel. */
const stressAt = (torque: number, friction: number): number =>
  strandStress(strandForceAtWheel(thrustAt(torque, friction)), bandArea);

const { thickness, widthOverTeeth, youngsModulus, density, speed } = OTTERSLEIGH;
const loop = { youngsModulus, loopLength };
const inCoil = coilEnergy({
  ...loop,
  thickness,
  radius: coilRadius(loopLength, OTTERSLEIGH.coilRings),
  area: thickness * widthOverTeeth,
});

function storedEnergies(stress: number, wheelForce: number) {
  const inBand = stretchEnergy({ ...loop, stress, area: bandArea });
  return {
    bandEnergy: inBand,
    frameEnergy: supportEnergy(wheelForce, OTTERSLEIGH.frameStiffness),
    springEnergy: supportEnergy(wheelForce, SOFT_SPRING),
    coilTimesBand: inCoil / inBand,
    recoilSpeed: recoilSpeed({ stress, youngsModulus, density }),
  };
}

/** Torque on the handle to thrust, wheel force, strand force, stress and dial reading; and the energies stored. */
export const titleMill = defineModel({
  name: 'title-mill',
  inputs: {
    torque: { kind: 'torque', default: 14, min: 2, max: 25, step: { metric: 0.5, us: 0.6779 } },
  },
  outputs: {
    thrust: 'force',
    wheelForce: 'force',
    strandForce: 'force',
    stress: 'stress',
    stressLow: 'stress',
    stressHigh: 'stress',
    stretch: 'stretch',
    bandEnergy: 'energy',
    frameEnergy: 'energy',
    springEnergy: 'energy',
    coilEnergy: 'energy',
    coilTimesBand: 'ratio',
    runningEnergy: 'energy',
    recoilSpeed: 'speed',
    speed: 'speed',
    area: 'area',
    loopLength: 'longLength',
  },
  constants: {
    coilEnergy: inCoil,
    runningEnergy: kineticEnergy({ massPerLength: massPerLength(OTTERSLEIGH), loopLength, speed }),
    speed,
    area: bandArea,
    loopLength,
  },
  evaluate: ({ torque }) => {
    const { threadFriction, gaugeLength } = OTTERSLEIGH;
    const thrust = thrustAt(torque, threadFriction.middle);
    const stress = stressAt(torque, threadFriction.middle);
    return {
      thrust,
      wheelForce: thrust,
      strandForce: strandForceAtWheel(thrust),
      stress,
      stressLow: stressAt(torque, threadFriction.high),
      stressHigh: stressAt(torque, threadFriction.low),
      stretch: elongation({ stress, youngsModulus, gaugeLength }),
      ...storedEnergies(stress, thrust),
    };
  },
});

type Name = QuantityOf<typeof titleMill>;

const PLAIN: readonly Name[] = [
  'thrust',
  'wheelForce',
  'frameEnergy',
  'springEnergy',
  'speed',
  'area',
  'loopLength',
];

/** The ink in which a quantity of this mill is written. */
export function titleInk(name: Name): Ink {
  if (name === 'torque') return 'hand';
  return PLAIN.includes(name) ? 'plain' : 'steel';
}
