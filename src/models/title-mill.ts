/**
 * The chain from the handle to the dial on one invented small mill: the numbers of the title page and of the
 * cautions. A trapezoidal screw with a ball bearing under its head pulls the movable wheel in line.
 * Units: SI.
 * Source: exact screw (core/screw), two strands on the wheel (core/section), Hooke's law (core/elasticity), energies
 * (core/energy); the mill is invented, its thread friction is a guess from handbook ranges, from memory.
 */
import { massPerLength } from '../core/band-mass.ts';
import { wornCollarDiameter } from '../core/collar.ts';
import { elongation } from '../core/elasticity.ts';
import {
  coilEnergy,
  coilRadius,
  kineticEnergy,
  recoilSpeed,
  stretchEnergy,
  supportEnergy,
} from '../core/energy.ts';
import { loopLengthEqual } from '../core/loop.ts';
import { thrustFromTorque } from '../core/screw.ts';
import { screwOnThread } from '../core/screw-on-thread.ts';
import { sectionArea, strandForceAtWheel, strandStress } from '../core/section.ts';
import { thread } from '../core/threads.ts';
import { defineModel } from './define-model.ts';

/** The invented mill; its band's steel has the site's usual values. */
export const TITLE_MILL = {
  place: 'Ottersleigh',
  wheelDiameter: 0.52,
  centreDistance: 1.35,
  widthOverTeeth: 0.035,
  bodyWidth: 0.029,
  thickness: 0.001,
  guideSpan: 0.55,
  gaugeLength: 0.4,
  thread: 'Tr20x4',
  threadFriction: { low: 0.1, middle: 0.14, high: 0.18 },
  collar: { outerDiameter: 0.042, innerDiameter: 0.02 },
  collarFriction: 0.004,
  dragTorque: 0.8,
  frameStiffness: 8e6,
  softSpring: 1e5, // N/m, what a long soft spring in its place would be
  speed: 24,
  youngsModulus: 205e9,
  density: 7850,
  coilRings: 3,
} as const;

const area = sectionArea({ width: TITLE_MILL.bodyWidth, thickness: TITLE_MILL.thickness });
const loopLength = loopLengthEqual(TITLE_MILL);

/** Thrust of the screw in N for a torque on its handle in N·m, with a given thread friction. */
function thrustAt(torque: number, threadFriction: number): number {
  const screw = screwOnThread(thread(TITLE_MILL.thread), {
    threadFriction,
    collarFriction: TITLE_MILL.collarFriction,
    collarDiameter: wornCollarDiameter(TITLE_MILL.collar),
  });
  return thrustFromTorque(screw, Math.max(0, torque - TITLE_MILL.dragTorque));
}

/** Stress in Pa; the screw pulls in line, so its thrust is the force on the wheel. */
const stressAt = (torque: number, friction: number): number =>
  strandStress(strandForceAtWheel(thrustAt(torque, friction)), area);

function storedEnergies(stress: number, wheelForce: number) {
  const { thickness, widthOverTeeth, youngsModulus, density, speed } = TITLE_MILL;
  const loop = { youngsModulus, loopLength };
  const coil = {
    thickness,
    radius: coilRadius(loopLength, TITLE_MILL.coilRings),
    area: thickness * widthOverTeeth,
  };
  const inBand = stretchEnergy({ ...loop, stress, area });
  const inCoil = coilEnergy({ ...loop, ...coil });
  return {
    bandEnergy: inBand,
    frameEnergy: supportEnergy(wheelForce, TITLE_MILL.frameStiffness),
    springEnergy: supportEnergy(wheelForce, TITLE_MILL.softSpring),
    coilEnergy: inCoil,
    coilTimesBand: inCoil / inBand,
    runningEnergy: kineticEnergy({ massPerLength: massPerLength(TITLE_MILL), loopLength, speed }),
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
    const { threadFriction, youngsModulus, gaugeLength } = TITLE_MILL;
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
      area,
      loopLength,
    };
  },
});
