/**
 * How the quantities of the model `steel-in-the-section` are named.
 * Units: none.
 * Source: definition.
 */
import { hand, type ModelWords, plain, steel } from '../../models/words.ts';
import type { steelInTheSection } from './model.ts';

/** The words of every input and output. */
export const words: ModelWords<typeof steelInTheSection> = {
  inputs: {
    bodyWidth: hand('body width, gullet to back', 'w'),
    thickness: hand('thickness', 't'),
    toothDepth: hand('depth of the teeth', 'h'),
    sharpenings: hand('re-sharpenings', 'n'),
    otherWidth: hand('body width of the other band', "w'"),
    otherThickness: hand('thickness of the other band', "t'"),
    wantedStress: hand('stress at which the band is set', '\\sigma'),
  },
  outputs: {
    area: steel('load-bearing section', 'A'),
    widthOverTeeth: plain('width over the teeth', 'W'),
    catalogueArea: steel('section by the catalogue width', 'W\\,t'),
    catalogueExcess: steel('too much by the catalogue width'),
    rodDiameter: steel('round rod with as much steel', 'd'),
    targetStress: steel('stress wanted', '\\sigma'),
    strandForce: steel('pull of one strand', 'T'),
    wheelForce: steel('force on the wheel', 'F_w'),
    torque: hand('torque for that stress', 'M'),
    dragTorque: plain('no-load torque', 'M_0'),
    lostWidth: plain('width lost by one sharpening'),
    sharpenedWidth: plain('body width after sharpening'),
    sharpenedArea: steel('section after sharpening'),
    sharpenedStress: steel('stress at the old torque'),
    sharpenedRise: steel('rise of the stress'),
    sharpenedTorque: hand('torque that keeps the stress'),
    otherArea: steel('section of the other band', "A'"),
    otherTorque: hand('torque for the other band', "M'"),
    scaledWhole: plain('whole torque scaled'),
    scaledBare: plain('scaled torque above the no-load torque'),
    scaledBackwards: plain('scaled backwards'),
    otherStress: steel('stress of the other band at the old torque'),
  },
};
