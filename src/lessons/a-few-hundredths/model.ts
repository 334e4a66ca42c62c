/**
 * A few hundredths: two looks at a dial to be read, a rig on which one thing at a time goes wrong, and what makes the
 * stress uncertain, cause by cause.
 * Units: SI.
 * Source: the modules beside it, by their own sources; the mill is invented.
 */
import { bandSteel, thermalExpansion } from '../../core/assumptions.ts';
import { FACES } from '../../figures/dial/faces.ts';
import { defineModel } from '../../models/define-model.ts';
import { uncertainty } from './budget/causes.ts';
import { CHANGES, START } from './budget/plans.ts';
import { LOOKS, READING_KINDS, readingsOf } from './reading/readings.ts';
import { BARS, FAULTS, RIG, RIG_KINDS, shownOnRig } from './rig/faults.ts';

const DEGREE = Math.PI / 180;
const FAHRENHEIT = 5 / 9;

/** The causes by the names of the outputs; in the equation and the questions the small ones are taken together. */
function causes(bar: number, change: (typeof CHANGES)[number]) {
  const { parts, whole } = uncertainty(bar, change);
  const { line, dial, modulus, warmth, noLoad, bar: ofBar } = parts;
  const rest = Math.hypot(modulus, warmth, noLoad, ofBar);
  return {
    byLine: line,
    byDial: dial,
    byModulus: modulus,
    byWarmth: warmth,
    byNoLoad: noLoad,
    byBar: ofBar,
    byRest: rest,
    whole,
    shareOfStress: whole / RIG.rigStress,
    plainSum: line + dial + rest,
    withLineHalved: Math.hypot(line / 2, dial, rest),
    withDialHalved: Math.hypot(line, dial / 2, rest),
    withRestHalved: Math.hypot(line, dial, rest / 2),
  };
}

/** Readings of a dial, a rig with a fault, and a budget. */
export const aFewHundredths = defineModel({
  name: 'a-few-hundredths',
  inputs: {
    picture: { kind: 'count', default: 1, min: 1, max: 500, step: { metric: 1, us: 1 } },
    look: { options: LOOKS, default: 'two' },
    face: { options: FACES, default: 'metric', us: 'inch' },
    fault: { options: FAULTS, default: 'angle' },
    angle: {
      kind: 'angle',
      default: 3 * DEGREE,
      min: 0,
      max: 4 * DEGREE,
      step: { metric: DEGREE / 4, us: DEGREE / 4 },
    },
    bar: { options: BARS, default: 'steel' },
    warming: {
      kind: 'temperatureDifference',
      default: 3,
      min: 0,
      max: 15,
      step: { metric: 0.5, us: FAHRENHEIT },
    },
    slip: {
      kind: 'stretch',
      default: 2e-5,
      min: 0,
      max: 5e-5,
      step: { metric: 5e-6, us: 6.35e-6 },
    },
    barLength: {
      kind: 'length',
      default: START.bar,
      min: 0.25,
      max: 0.8,
      step: { metric: 0.05, us: 0.0508 },
    },
    change: { options: CHANGES, default: START.change },
  },
  outputs: {
    ...READING_KINDS,
    ...RIG_KINDS,
    byLine: 'stress',
    byDial: 'stress',
    byModulus: 'stress',
    byWarmth: 'stress',
    byNoLoad: 'stress',
    byBar: 'stress',
    byRest: 'stress',
    whole: 'stress',
    shareOfStress: 'percent',
    modulusSpread: 'percent',
    aluminiumGrows: 'thermalExpansion',
    steelModulus: 'modulus',
    plainSum: 'stress',
    withLineHalved: 'stress',
    withDialHalved: 'stress',
    withRestHalved: 'stress',
  },
  constants: {
    ...RIG,
    modulusSpread: bandSteel.youngsModulusHalfWidth / bandSteel.youngsModulus,
    aluminiumGrows: thermalExpansion.aluminium,
    steelModulus: bandSteel.youngsModulus,
  },
  evaluate: ({ picture, face, barLength, change, ...rig }) => ({
    ...readingsOf(picture, face),
    ...shownOnRig(rig),
    ...causes(barLength, change),
  }),
});
