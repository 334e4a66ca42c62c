/**
 * How the quantities of the model `second-opinion` are named.
 * Units: none.
 * Source: definition.
 */
import { hand, type ModelWords, plain, steel } from '../../models/words.ts';
import type { secondOpinion } from './model.ts';
import { MISTAKE_WORDS } from './routes/mistakes.ts';

/** The words of every input and output. */
export const words: ModelWords<typeof secondOpinion> = {
  inputs: {
    stress: hand('stress in the band', '\\sigma'),
    span: hand('span, from guide to guide', 's'),
    band: { label: 'band', options: { narrow: 'narrow', wide: 'wide' } },
    note: hand('note', 'f'),
    noteWidth: hand('good to ± (95 %)', 'U_f'),
    weight: hand('weight', 'm_w'),
    deflection: hand('how far the band moves', 'd'),
    mistake: { label: 'suppose this went wrong', options: MISTAKE_WORDS },
  },
  outputs: {
    pitch: steel('note of the span'),
    secondTone: steel('second tone'),
    thirdTone: steel('third tone'),
    fourfoldPitch: steel('note at four times the stress'),
    otherPitch: plain('note of the other band'),
    strandPitch: steel('note of the free strand'),
    strandPull: steel('pull of the strand', 'T'),
    otherPull: steel('pull of the other band'),
    area: plain('load-bearing section', 'A'),
    bodyWidth: plain('body width'),
    thickness: plain('thickness'),
    density: plain('density of steel', '\\rho'),
    teeth: plain('mass of the band over that of its load-bearing section', 'r'),
    poundGravity: plain('inches a second, each second, of free fall'),
    phoneHears: plain('frequency below which a phone hears little'),
    stringStress: steel('stress as a bare string', '\\sigma_0'),
    stringWithoutTeeth: steel('the same with the teeth left out'),
    stringInPounds: steel('the same with a pound of mass taken for a pound of force'),
    noteStress: steel('stress by the note', '\\sigma'),
    noteExpanded: steel('its uncertainty, 95 %'),
    noteLow: steel('its low end'),
    noteHigh: steel('its high end'),
    noteString: plain('what stiffness and guides take off'),
    ifSecond: steel('stress if the note were the second tone'),
    firstIfSecond: plain('the fundamental that this would be'),
    canBeSecond: plain('whether the span can have the note as its second tone'),
    lowestNote: plain('lowest note that tells a stress'),
    isTooLow: plain('whether the note is too low for the span'),
    pressForce: hand('force of the weight', 'F'),
    pressString: steel('pull as a bare string', 'T_0'),
    pullOfMass: steel('the same with the weight taken as a mass'),
    pressPull: steel('pull of the strand', 'T'),
    pressStress: steel('stress by the weight', '\\sigma_F'),
    pressStringStress: steel('stress by the weight as a bare string'),
    pressExpanded: steel('its uncertainty, 95 %'),
    pressCorrection: plain('what bending and stretching take off'),
    strandSpan: plain('free strand, wheel to wheel', 's_w'),
    mostDeflection: plain('furthest that the band should move'),
    dialStress: steel('stress by the dial'),
    dialExpanded: steel('its uncertainty, 95 %'),
    pluckStress: steel('stress by the note at Ottersleigh'),
    pluckExpanded: steel('its uncertainty, 95 %'),
    weightStress: steel('stress by the weight at Ottersleigh'),
    weightExpanded: steel('its uncertainty, 95 %'),
    dialPluck: plain('agreement number of dial and note'),
    dialPress: plain('agreement number of dial and weight'),
    pluckPress: plain('agreement number of note and weight'),
    sectionTimes: plain('how much too large the section is taken'),
    zeroError: plain('how far the zero is wrong'),
    spanError: plain('how much too long the span is measured'),
  },
};
