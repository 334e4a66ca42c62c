/**
 * How the quantities of the model `when-it-warms` are named.
 * Units: none.
 * Source: definition.
 */
import { hand, type ModelWords, plain, steel } from '../../models/words.ts';
import type { whenItWarms } from './model.ts';

/** The words of every input and output. */
export const words: ModelWords<typeof whenItWarms> = {
  inputs: {
    bandWarm: hand('band warmer, cutting'),
    frameWarm: hand('frame warmer, in the sun'),
    wheelsWarm: hand('wheels warmer, at 5 pm'),
    bandNow: hand('band warmer by'),
    frameNow: hand('frame warmer by'),
    wheelsNow: hand('wheels warmer by'),
    warmer: hand('band warmer by', '\\Delta T'),
    tensioner: {
      label: 'what holds the wheel',
      options: {
        rigid: 'nothing gives',
        screw: 'screw, real frame',
        spring: 'a spring',
        oil: 'oil, constant pressure',
      },
    },
  },
  outputs: {
    setting: steel('stress at the setting', '\\sigma'),
    firstLoss: steel('stress lost in the first hour'),
    firstShare: steel('share of the tension lost in the first hour'),
    firstStress: steel('stress after the first hour, screw'),
    firstStressSpring: steel('stress after the first hour, spring'),
    lunchStress: steel('stress at lunch, screw'),
    lunchChange: steel('change of the stress until lunch'),
    lunchShare: steel('the same as a share of the setting'),
    duskStress: steel('stress once the band has cooled'),
    frostStress: steel('stress in the frost'),
    frostChange: steel('change of the stress in the frost'),
    bandGain: steel('room that the band gains at the wheel'),
    frameTakes: plain('room that the frame takes up'),
    wheelsTake: plain('room that the wheels take up'),
    slackNow: steel('what is left over'),
    changeNow: steel('change of the stress'),
    rigidLoss: steel('what a rigid mill would lose'),
    supportShare: plain('share of that on this mill', 'q'),
    shareTurned: plain('the rest of it'),
    checkLoss: steel('stress lost', '\\Delta\\sigma'),
    lossTurned: steel('stress lost with the stiffnesses swapped'),
    lossShare: steel('share of the tension lost'),
    warmStress: steel('stress at the warm check', '\\sigma_w'),
    againStress: steel('stress after tightening warm, cold again'),
    youngsModulus: plain('Young’s modulus', 'E'),
    expansion: plain('thermal expansion of steel', '\\alpha_T'),
    bandStiffness: plain('stiffness of the band', 'k_b'),
    frameStiffness: plain('stiffness of the frame', 'k_f'),
    springStiffness: plain('stiffness of the spring', 'k_s'),
    perDegree: steel('stress for each degree on a rigid mill'),
    oilColumn: plain('length of the column of oil'),
    oilBore: plain('bore of the cylinder'),
    oilWarming: plain('how much the oil warms'),
    oilStiffness: plain('stiffness of the oil'),
    oilFrame: plain('stiffness of Dunmarrow’s frame'),
    oilPush: plain('how far the oil grows'),
    oilStress: steel('stress that warm oil adds'),
    barWarming: plain('how much band and bar warm'),
    steelBar: steel('false stress on a steel bar'),
    aluminiumBar: steel('false stress on an aluminum bar'),
    woodenBar: steel('false stress on a wooden bar'),
  },
};
