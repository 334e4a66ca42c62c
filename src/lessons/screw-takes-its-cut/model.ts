/**
 * The screw takes its cut: one turn of thread unrolled into a ramp, what friction in thread and collar leaves of the
 * effort, and what thrust a torque on the handle may therefore be. The screw pulls in line with the wheel.
 * Units: SI. Torques are above the no-load torque.
 * Source: exact screw (core/screw); friction and its spread after `screw-friction`, from memory.
 */
import { efficiency, type Screw, thrustFromTorque } from '../../core/screw.ts';
import { strandForceAtWheel, strandStress } from '../../core/section.ts';
import { defineModel } from '../../models/define-model.ts';
import { HANDBOOK_KINDS, handbookFriction } from '../../models/handbook-friction.ts';
import { atDoubt, screwOf } from './friction-doubt.ts';
import { ACME_SCREW } from './mill-screws.ts';
import { effortShares, rampOf, torquesAt } from './ramp-outputs.ts';

/** Efficiency of a screw, and the thrust and strand stress that a torque above the no-load torque gives with it. */
function reached(screw: Screw, torque: number, area: number) {
  const thrust = thrustFromTorque(screw, torque);
  const stress = strandStress(strandForceAtWheel(thrust), area);
  return { efficiency: efficiency(screw), thrust, stress };
}

/** Friction, lead, form and collar to efficiency; with torque and band to thrust and stress, as ranges. */
export const screwTakesItsCut = defineModel({
  name: 'screw-takes-its-cut',
  inputs: {
    threadFriction: {
      kind: 'ratio',
      default: ACME_SCREW.threadFriction,
      min: 0,
      max: 0.3,
      step: { metric: 0.01, us: 0.01 },
    },
    lead: {
      kind: 'length',
      default: ACME_SCREW.lead,
      min: 0.001,
      max: 0.02032,
      step: { metric: 1e-4, us: 2.54e-4 },
    },
    threadForm: {
      options: ['square', 'acme', 'trapezoidal', 'v60'],
      default: ACME_SCREW.threadForm,
      counted: ['square', 'acme', 'trapezoidal', 'v60'],
    },
    meanDiameter: {
      kind: 'length',
      default: ACME_SCREW.meanDiameter,
      min: 0.014,
      max: 0.036,
      step: { metric: 1e-4, us: 2.54e-4 },
    },
    collarFriction: {
      kind: 'ratio',
      default: ACME_SCREW.collarFriction,
      min: 0,
      max: 0.2,
      step: { metric: 0.002, us: 0.002 },
    },
    collarDiameter: {
      kind: 'length',
      default: ACME_SCREW.collarDiameter,
      min: 0.015,
      max: 0.06,
      step: { metric: 5e-4, us: 2.54e-4 },
    },
    torque: {
      kind: 'torque',
      default: ACME_SCREW.torque,
      min: 2,
      max: 80,
      step: { metric: 0.5, us: 0.67790897 },
    },
    area: {
      kind: 'area',
      default: ACME_SCREW.area,
      min: 1e-5,
      max: 1.3e-4,
      step: { metric: 5e-7, us: 6.4516e-7 },
    },
    shown: { options: ['thrust', 'stress'], default: 'thrust', counted: ['thrust', 'stress'] },
  },
  outputs: {
    ...HANDBOOK_KINDS,
    round: 'length',
    leadAngle: 'angle',
    halfAngle: 'angle',
    wedging: 'ratio',
    frictionAngle: 'angle',
    holdingFriction: 'ratio',
    holds: 'count',
    pushUp: 'percent',
    pushFree: 'percent',
    pushDown: 'percent',
    threadEfficiency: 'percent',
    efficiency: 'percent',
    threadShare: 'percent',
    collarShare: 'percent',
    efficiencyLow: 'percent',
    efficiencyHigh: 'percent',
    thrust: 'force',
    thrustLow: 'force',
    thrustHigh: 'force',
    stress: 'stress',
    stressLow: 'stress',
    stressHigh: 'stress',
    threadTorque: 'torque',
    collarTorque: 'torque',
    looseningTorque: 'torque',
    efficiencyByTwo: 'percent',
    thrustByTwo: 'force',
  },
  constants: handbookFriction,
  evaluate: ({ torque, area, ...inputs }) => {
    const screw = screwOf(inputs);
    const middle = reached(screw, torque, area);
    const least = reached(atDoubt(screw, 1), torque, area);
    const most = reached(atDoubt(screw, -1), torque, area);
    return {
      ...rampOf(screw),
      ...effortShares(screw),
      ...middle,
      efficiencyLow: least.efficiency,
      efficiencyHigh: most.efficiency,
      thrustLow: least.thrust,
      thrustHigh: most.thrust,
      stressLow: least.stress,
      stressHigh: most.stress,
      ...torquesAt(screw, middle.thrust),
    };
  },
});
