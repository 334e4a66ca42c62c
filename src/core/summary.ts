/**
 * What a list of values comes to: its mean and spread; and what a class gained, from the scores of its learners. A door.
 * Units: those of the values.
 * Source: named in each file behind it.
 */
export {
  type ClassGain,
  classGain,
  gainBand,
  gainBands,
  normalizedGain,
  type TwoScores,
} from './statistics/gain.ts';
export { mean, standardDeviation, sum } from './statistics/moments.ts';
