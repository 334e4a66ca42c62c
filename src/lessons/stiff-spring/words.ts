/**
 * How the quantities of the model `stiff-spring` are named.
 * Units: none.
 * Source: definition.
 */
import { hand, type ModelWords, plain, steel } from '../../models/words.ts';
import type { stiffSpring } from './model.ts';

/** The words of every input and output. */
export const words: ModelWords<typeof stiffSpring> = {
  inputs: {
    stretch: hand('stretch between the clamps', '\\Delta L'),
    gaugeLength: hand('gauge length', 'L_0'),
    released: { label: 'the strip is', options: { held: 'held', letGo: 'let go' } },
  },
  outputs: {
    strain: steel('strain', '\\varepsilon'),
    stress: steel('stress in the steel', '\\sigma'),
    force: steel('pull', 'T'),
    hangingMass: steel('what would hang from it', 'm'),
    hookeStress: steel('stress by Hooke’s law', 'E\\,\\varepsilon'),
    shareOfLimit: steel('share of the elastic limit'),
    limitStretch: steel('stretch at the elastic limit'),
    leftStretch: steel('stretch left after letting go'),
    perHundredth: steel('stress for 0.01 mm of stretch'),
    perThousandth: steel('stress for 0.001 in of stretch'),
    youngsModulus: plain('Young’s modulus', 'E'),
    modulusLow: plain('least usual modulus'),
    modulusHigh: plain('highest usual modulus'),
    area: plain('section of the strip', 'A'),
    elasticLimit: plain('elastic limit'),
    cautiousLimit: plain('elastic limit where none is known'),
  },
};
