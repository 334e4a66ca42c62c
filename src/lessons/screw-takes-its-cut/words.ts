/**
 * How the quantities of the model `screw-takes-its-cut` are named.
 * Units: none.
 * Source: definition.
 */
import { HANDBOOK_WORDS } from '../../models/handbook-words.ts';
import { hand, type ModelWords, plain, steel } from '../../models/words.ts';
import { EDGES } from './edge-words.ts';
import type { screwTakesItsCut } from './model.ts';

/** The words of every input and output. */
export const words: ModelWords<typeof screwTakesItsCut> = {
  inputs: {
    threadFriction: hand('friction in the thread', '\\mu'),
    lead: hand('lead: travel in one turn', 'l'),
    threadForm: {
      label: 'thread form',
      options: { square: 'square', acme: 'Acme', trapezoidal: 'trapezoidal', v60: '60° V' },
    },
    meanDiameter: hand('pitch diameter of the thread', 'd_2'),
    collarFriction: hand('friction under the collar', '\\mu_c'),
    collarDiameter: hand('mean diameter of the collar', 'd_c'),
    torque: hand(EDGES.torque, 'M - M_0'),
    area: hand('load-bearing section of the band', 'A'),
    shown: { label: 'the table shows', options: { thrust: 'thrust', stress: 'strand stress' } },
  },
  outputs: {
    ...HANDBOOK_WORDS,
    round: plain('one turn round'),
    leadAngle: plain('lead angle', '\\lambda'),
    halfAngle: plain('flank angle', '\\alpha'),
    wedging: plain('how many times the flank feels the friction'),
    frictionAngle: plain('friction angle on the ramp', "\\varphi'"),
    holdingFriction: plain('friction at which the thread just holds'),
    holds: plain('the thread holds by itself'),
    pushUp: plain('push to raise the load'),
    pushFree: plain('push without friction'),
    pushDown: plain('push to let the load down'),
    threadEfficiency: plain('what the thread passes on'),
    efficiency: plain(EDGES.efficiency, 'e'),
    threadShare: plain('what the thread keeps'),
    collarShare: plain('what the collar keeps'),
    efficiencyLow: plain('efficiency with more friction'),
    efficiencyHigh: plain('efficiency with less friction'),
    thrust: plain('thrust of the screw', 'Q'),
    thrustLow: plain('thrust with more friction'),
    thrustHigh: plain('thrust with less friction'),
    stress: steel('stress in the steel', '\\sigma'),
    stressLow: steel('stress with more friction'),
    stressHigh: steel('stress with less friction'),
    threadTorque: plain('torque of the thread'),
    collarTorque: plain('torque of the collar'),
    looseningTorque: plain('torque to loosen, above the no-load torque', 'M_\\downarrow - M_0'),
    efficiencyByTwo: plain('efficiency from two torques'),
    thrustByTwo: plain('thrust from two torques'),
  },
};
