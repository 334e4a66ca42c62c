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
import { defineModel } from '../define-model.ts';
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

function storedEnergies(stress: number, wheelForce: number) {
  const { thickness, widthOverTeeth, youngsModulus, density, speed } = OTTERSLEIGH;
  const loop = { youngsModulus, loopLength };
  const coil = {
    thickness,
    radius: coilRadius(loopLength, OTTERSLEIGH.coilRings),
    area: thickness * widthOverTeeth,
  };
  const inBand = stretchEnergy({ ...loop, stress, area: bandArea });
  const inCoil = coilEnergy({ ...loop, ...coil });
  return {
    bandEnergy: inBand,
    frameEnergy: supportEnergy(wheelForce, OTTERSLEIGH.frameStiffness),
    springEnergy: supportEnergy(wheelForce, SOFT_SPRING),
    coilEnergy: inCoil,
    coilTimesBand: inCoil / inBand,
    runningEnergy: kineticEnergy({ massPerLength: massPerLength(OTTERSLEIGH), loopLength, speed }),
    recoilSpeed: recoilSpeed({ stress, youngsModulus, density }),
    speed,
  };
}

/** Torque on the handle to thrust, wheel force, strand force, stress and dial reading; and the energies stored. */
export const titleMill = defineModel({
  name: 'title-mill',
  inputs: {
    torque: {
      kind: 'torque',
      symbol: 'M',
      label: 'torque on the handle',
      default: 14,
      min: 2,
      max: 25,
      step: { metric: 0.5, us: 0.6779 },
    },
  },
  outputs: {
    thrust: { kind: 'force', symbol: 'Q', label: 'thrust of the screw', ink: 'plain' },
    wheelForce: { kind: 'force', symbol: 'F_w', label: 'force on the wheel', ink: 'plain' },
    strandForce: { kind: 'force', symbol: 'T', label: 'force in one strand' },
    stress: { kind: 'stress', symbol: '\\sigma', label: 'stress in the steel' },
    stressLow: { kind: 'stress', symbol: '', label: 'stress with more friction' },
    stressHigh: { kind: 'stress', symbol: '', label: 'stress with less friction' },
    stretch: { kind: 'stretch', symbol: '\\Delta L', label: 'stretch over the gauge length' },
    bandEnergy: { kind: 'energy', symbol: '', label: 'energy in the stretched band' },
    frameEnergy: { kind: 'energy', symbol: '', label: 'energy in the frame', ink: 'plain' },
    springEnergy: { kind: 'energy', symbol: '', label: 'energy in a soft spring', ink: 'plain' },
    coilEnergy: { kind: 'energy', symbol: '', label: 'energy in the coiled band' },
    coilTimesBand: { kind: 'ratio', symbol: '', label: 'coiled over stretched' },
    runningEnergy: { kind: 'energy', symbol: '', label: 'energy of the running band' },
    recoilSpeed: { kind: 'speed', symbol: '', label: 'speed from the stretch' },
    speed: { kind: 'speed', symbol: 'v', label: 'speed of the band', ink: 'plain' },
    area: { kind: 'area', symbol: 'A', label: 'load-bearing section', ink: 'plain' },
    loopLength: { kind: 'longLength', symbol: 'L', label: 'length of the band', ink: 'plain' },
  },
  evaluate: ({ torque }) => {
    const { threadFriction, youngsModulus, gaugeLength } = OTTERSLEIGH;
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
      area: bandArea,
      loopLength,
    };
  },
});
