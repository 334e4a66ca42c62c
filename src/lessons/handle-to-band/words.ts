/**
 * How the quantities of the model `handle-to-band` are named.
 * Units: none.
 * Source: definition.
 */
import { HANDBOOK_WORDS } from '../../models/handbook-words.ts';
import { hand, type ModelWords, plain, steel } from '../../models/words.ts';
import type { handleToBand } from './model.ts';

/** The words of every input and output. */
export const words: ModelWords<typeof handleToBand> = {
  inputs: {
    turns: hand('turns of the handle from no tension', 'n'),
    friction: hand('friction in the thread', '\\mu'),
    frameStiffness: hand('stiffness of the frame', 'k_f'),
  },
  outputs: {
    torque: hand('torque on the handle', 'M'),
    thrust: plain('thrust of the screw', 'Q'),
    wheelForce: plain('force on the wheel', 'F_w'),
    strandForce: steel('force in one strand', 'T'),
    stress: steel('stress in the steel', '\\sigma'),
    stretch: steel('stretch over the gauge length', '\\Delta L'),
    screwTravel: plain('travel of the screw', 'n\\,l'),
    wheelTravel: steel('travel of the wheel', 'x_b'),
    frameTravel: plain('give of the frame', 'x_f'),
    work: hand('work of the turns', 'W'),
    bandWork: steel('energy in the stretched band', 'U_b'),
    frameWork: plain('energy in the frame', 'U_f'),
    threadWork: plain('heat in the thread', 'H_t'),
    collarWork: plain('heat in the bearing', 'H_c'),
    dragWork: plain('heat from the no-load torque', 'H_d'),
    bandShare: steel('share of the work in the band'),
    heatShare: plain('share that is heat'),
    heat: plain('work turned to heat'),
    threadPart: plain('part of the heat from the thread'),
    dragPart: plain('part of the heat from the no-load torque'),
    clickTorque: hand('torque at which the wrench clicks'),
    clickStress: steel('stress when the wrench clicks'),
    dryLoss: steel('share of the stress lost on a dry thread'),
    ...HANDBOOK_WORDS,
    coilEnergy: steel('energy of the coiled band'),
    efficiency: plain('efficiency of the screw', 'e'),
    dragTorque: plain('no-load torque', 'M_0'),
    lead: plain('lead of the screw', 'l'),
    area: plain('load-bearing section', 'A'),
    bodyWidth: plain('body width', 'w'),
    thickness: plain('thickness', 't'),
    gaugeLength: plain('gauge length', 'L_0'),
    youngsModulus: plain('Young’s modulus', 'E'),
    bandStiffness: steel('stiffness of the band', 'k_b'),
    smoothThrust: steel('thrust without friction'),
    thrustWithDrag: steel('thrust with the no-load torque left in'),
    workAtEndTorque: steel('work at the last torque'),
  },
};
