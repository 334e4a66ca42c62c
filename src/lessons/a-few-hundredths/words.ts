/**
 * How the quantities of the model `a-few-hundredths` are named.
 * Units: none.
 * Source: definition.
 */
import { hand, type ModelWords, plain, steel } from '../../models/words.ts';
import type { aFewHundredths } from './model.ts';

/** The words of every input and output. */
export const words: ModelWords<typeof aFewHundredths> = {
  inputs: {
    picture: hand('picture of the dial'),
    look: { label: 'read', options: { two: 'how far it moved', one: 'what it shows now' } },
    face: {
      label: 'dial in',
      options: { metric: 'millimeters', inch: 'inches' },
    },
    fault: {
      label: 'what goes wrong',
      options: {
        angle: 'bar askew',
        hand: 'warm hand on the bar',
        sun: 'sun on both',
        slip: 'clamp slips',
      },
    },
    angle: hand('angle of the bar to the band', '\\vartheta'),
    bar: { label: 'bar of', options: { wood: 'wood', steel: 'steel', aluminium: 'aluminum' } },
    warming: hand('warmer by', '\\Delta T'),
    slip: hand('the clamp slips by'),
    barLength: hand('gauge length of the bar', 'L_0'),
    change: {
      label: 'and',
      options: {
        none: 'nothing else',
        finerDial: 'finer dial',
        threeSeries: 'three series',
        laterStart: 'later start',
      },
    },
  },
  outputs: {
    markTravel: plain('one mark of the dial'),
    turnTravel: plain('one turn of the hand'),
    shownBefore: plain('first reading'),
    shownNow: plain('second reading'),
    higherShown: plain('the higher reading', 'r_\\text{high}'),
    lowerShown: plain('the lower reading', 'r_\\text{low}'),
    markBefore: plain('mark at the hand first'),
    markNow: plain('mark at the hand now'),
    moved: steel('how far the dial moved', 'D'),
    rigLength: plain('gauge length of the rig', 'L_0'),
    rigStress: steel('stress in the band', '\\sigma'),
    rigStretch: steel('stretch of the band', '\\Delta L'),
    rigShown: plain('what the dial shows'),
    feignedStretch: plain('what the fault adds on the dial'),
    feignedStress: plain('stress that the fault feigns', '\\Delta\\sigma'),
    feignedSize: plain('size of that stress'),
    aluminiumGrows: plain('growth of aluminum with warmth'),
    steelModulus: plain('Young’s modulus'),
    ofSteelBar: plain('stress that a warm steel bar hides'),
    bandGrowth: plain('how far the band grows with warmth'),
    barGrowth: plain('how far the bar grows with warmth'),
    lostShare: plain('share that a bar askew does not see'),
    saidStress: plain('stress by the dial'),
    byLine: plain('± of the line through the readings', 'U_\\text{line}'),
    byDial: plain('± of the dial', 'U_\\text{dial}'),
    byModulus: plain('± of Young’s modulus'),
    byWarmth: plain('± of warmth'),
    byNoLoad: plain('± of the no-load torque'),
    byBar: plain('± of length and angle of the bar'),
    byRest: plain('± of everything else', 'U_\\text{rest}'),
    whole: plain('± of the stress', 'U'),
    shareOfStress: plain('the same as a share of the stress'),
    modulusSpread: plain('how far Young’s modulus may be off'),
    plainSum: plain('sum without the squares'),
    withLineHalved: plain('± with half of the line’s'),
    withDialHalved: plain('± with half of the dial’s'),
    withRestHalved: plain('± with half of the rest'),
  },
};
