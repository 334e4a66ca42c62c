/**
 * The screw takes its cut: one turn of thread unrolled into a ramp, what friction in thread and collar leaves of the
 * effort, and what thrust a torque on the handle may therefore be. The screw pulls in line with the wheel.
 * Units: SI. Torques are above the drag of the empty screw.
 * Source: exact screw (core/screw); friction and its spread after `screw-friction`, from memory.
 */
import { efficiency, type Screw, thrustFromTorque } from '../../core/screw.ts';
import { strandForceAtWheel, strandStress } from '../../core/section.ts';
import { defineModel } from '../../models/define-model.ts';
import { HANDBOOK_OUTPUTS, handbookFriction } from '../../models/handbook-friction.ts';
import { atDoubt, screwOf } from './friction-doubt.ts';
import { ACME_SCREW } from './mill-screws.ts';
import { effortShares, rampOf, torquesAt } from './ramp-outputs.ts';

/** Efficiency of a screw, and the thrust and strand stress that a torque above drag gives with it. */
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
      symbol: '\\mu',
      label: 'friction in the thread',
      default: ACME_SCREW.threadFriction,
      min: 0,
      max: 0.3,
      step: { metric: 0.01, us: 0.01 },
    },
    lead: {
      kind: 'length',
      symbol: 'l',
      label: 'lead: travel in one turn',
      default: ACME_SCREW.lead,
      min: 0.001,
      max: 0.02032,
      step: { metric: 1e-4, us: 2.54e-4 },
    },
    threadForm: {
      kind: 'count',
      symbol: '',
      label: 'thread form',
      default: ACME_SCREW.threadForm,
      min: 0,
      max: 3,
      step: { metric: 1, us: 1 },
      options: ['square', 'Acme', 'trapezoidal', '60° V'],
    },
    meanDiameter: {
      kind: 'length',
      symbol: 'd_2',
      label: 'pitch diameter of the thread',
      default: ACME_SCREW.meanDiameter,
      min: 0.014,
      max: 0.036,
      step: { metric: 1e-4, us: 2.54e-4 },
    },
    collarFriction: {
      kind: 'ratio',
      symbol: '\\mu_c',
      label: 'friction under the collar',
      default: ACME_SCREW.collarFriction,
      min: 0,
      max: 0.2,
      step: { metric: 0.002, us: 0.002 },
    },
    collarDiameter: {
      kind: 'length',
      symbol: 'd_c',
      label: 'mean diameter of the collar',
      default: ACME_SCREW.collarDiameter,
      min: 0.015,
      max: 0.06,
      step: { metric: 5e-4, us: 2.54e-4 },
    },
    torque: {
      kind: 'torque',
      symbol: 'M',
      label: 'torque on the handle, above drag',
      default: ACME_SCREW.torque,
      min: 2,
      max: 80,
      step: { metric: 0.5, us: 0.67790897 },
    },
    area: {
      kind: 'area',
      symbol: 'A',
      label: 'load-bearing section of the band',
      default: ACME_SCREW.area,
      min: 1e-5,
      max: 1.3e-4,
      step: { metric: 5e-7, us: 6.4516e-7 },
    },
    shown: {
      kind: 'count',
      symbol: '',
      label: 'the table shows',
      default: 0,
      min: 0,
      max: 1,
      step: { metric: 1, us: 1 },
      options: ['thrust', 'strand stress'],
    },
  },
  outputs: {
    ...HANDBOOK_OUTPUTS,
    round: { kind: 'length', symbol: '', label: 'one turn round', ink: 'plain' },
    leadAngle: { kind: 'angle', symbol: '\\lambda', label: 'lead angle', ink: 'plain' },
    halfAngle: { kind: 'angle', symbol: '\\alpha', label: 'flank angle', ink: 'plain' },
    wedging: {
      kind: 'ratio',
      symbol: '',
      label: 'how many times the flank feels the friction',
      ink: 'plain',
    },
    frictionAngle: {
      kind: 'angle',
      symbol: "\\varphi'",
      label: 'friction angle on the ramp',
      ink: 'plain',
    },
    holdingFriction: {
      kind: 'ratio',
      symbol: '',
      label: 'friction at which the thread just holds',
      ink: 'plain',
    },
    holds: { kind: 'count', symbol: '', label: 'the thread holds by itself', ink: 'plain' },
    pushUp: { kind: 'percent', symbol: '', label: 'push to raise the load', ink: 'plain' },
    pushFree: { kind: 'percent', symbol: '', label: 'push without friction', ink: 'plain' },
    pushDown: { kind: 'percent', symbol: '', label: 'push to let the load down', ink: 'plain' },
    threadEfficiency: {
      kind: 'percent',
      symbol: '',
      label: 'what the thread passes on',
      ink: 'plain',
    },
    efficiency: { kind: 'percent', symbol: 'e', label: 'efficiency of the screw', ink: 'plain' },
    threadShare: { kind: 'percent', symbol: '', label: 'what the thread keeps', ink: 'plain' },
    collarShare: { kind: 'percent', symbol: '', label: 'what the collar keeps', ink: 'plain' },
    efficiencyLow: {
      kind: 'percent',
      symbol: '',
      label: 'efficiency with more friction',
      ink: 'plain',
    },
    efficiencyHigh: {
      kind: 'percent',
      symbol: '',
      label: 'efficiency with less friction',
      ink: 'plain',
    },
    thrust: { kind: 'force', symbol: 'Q', label: 'thrust of the screw', ink: 'plain' },
    thrustLow: { kind: 'force', symbol: '', label: 'thrust with more friction', ink: 'plain' },
    thrustHigh: { kind: 'force', symbol: '', label: 'thrust with less friction', ink: 'plain' },
    stress: { kind: 'stress', symbol: '\\sigma', label: 'stress in the steel' },
    stressLow: { kind: 'stress', symbol: '', label: 'stress with more friction' },
    stressHigh: { kind: 'stress', symbol: '', label: 'stress with less friction' },
    threadTorque: { kind: 'torque', symbol: '', label: 'torque of the thread', ink: 'plain' },
    collarTorque: { kind: 'torque', symbol: '', label: 'torque of the collar', ink: 'plain' },
    looseningTorque: {
      kind: 'torque',
      symbol: 'M_\\downarrow',
      label: 'torque to loosen',
      ink: 'plain',
    },
    efficiencyByTwo: {
      kind: 'percent',
      symbol: '',
      label: 'efficiency from two torques',
      ink: 'plain',
    },
    thrustByTwo: { kind: 'force', symbol: '', label: 'thrust from two torques', ink: 'plain' },
  },
  evaluate: ({ torque, area, ...inputs }) => {
    const screw = screwOf(inputs);
    const middle = reached(screw, torque, area);
    const least = reached(atDoubt(screw, 1), torque, area);
    const most = reached(atDoubt(screw, -1), torque, area);
    return {
      ...handbookFriction,
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
