/**
 * Round the wheel: what bending on a wheel adds to a band's tension, the stress of a place on the band through a lap, and
 * how life would change with thickness, tension and wheel.
 * Units: SI.
 * Source: core/wheel; the mill at Ottersleigh is invented.
 */
import { bandSteel, edgeFactor, lifeExponent } from '../../core/assumptions.ts';
import { bendingStress, centrifugalStress } from '../../core/wheel.ts';
import { defineModel } from '../../models/define-model.ts';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { stressAt } from './lap.ts';
import { extremes, unequal, widths } from './other-mills.worked.ts';
import { OUTPUTS } from './outputs.ts';
import { relativeLife } from './relative-life.ts';
import { runningBand, type Setting } from './running-band.ts';

/** The tension that the lesson asks about first, on the mill's own wheels and band. */
export const asked = { tension: OTTERSLEIGH.targetStress } as const;

/** Half-width of the factor of the gullets, derived as that is. */
const EDGE_SPREAD = 0.05;

const { youngsModulus, density, yieldStrength } = bandSteel;

/** The bend on the drawn wheel, which may be an endless one, added to the tension and taken from it. */
function faces({ wheelDiameter, thickness, tension }: Setting, isEndless: boolean) {
  const shownBending = isEndless ? 0 : bendingStress({ youngsModulus, thickness, wheelDiameter });
  return {
    shownBending,
    bendTimes: shownBending / tension,
    outerStress: tension + shownBending,
    innerStress: tension - shownBending,
  };
}

/** A lap of the running band, and where one place is on it. */
function lap(setting: Setting, place: number) {
  const { isSlipping, ...band } = runningBand(setting);
  const strandShare = OTTERSLEIGH.centreDistance / band.loopLength;
  return {
    ...band,
    strandShare,
    isSlipping: isSlipping ? 1 : 0,
    cutAdds: (band.tightStress - band.slackStress) / 2,
    shareOfYield: band.peak / yieldStrength,
    stressHere: stressAt(place, strandShare, band),
  };
}

/** Wheel, band, tension, speed and power to the stresses of a lap and to relative life. */
export const roundTheWheel = defineModel({
  name: 'round-the-wheel',
  inputs: {
    over: { options: ['wheel', 'endless'], default: 'wheel' },
    wheelDiameter: {
      kind: 'length',
      default: OTTERSLEIGH.wheelDiameter,
      min: 0.35,
      max: 1.1,
      step: { metric: 0.01, us: 0.0127 },
    },
    thickness: {
      kind: 'thickness',
      default: OTTERSLEIGH.thickness,
      min: 0.6e-3,
      max: 1.3e-3,
      step: { metric: 1e-5, us: 2.54e-5 },
    },
    tension: {
      kind: 'stress',
      default: 80e6,
      min: 40e6,
      max: 200e6,
      step: { metric: 1e6, us: 689475.7 },
    },
    speed: {
      kind: 'speed',
      default: OTTERSLEIGH.speed,
      min: 0,
      max: 40,
      step: { metric: 1, us: 1.016 },
    },
    power: { kind: 'power', default: 9e3, min: 0, max: 15e3, step: { metric: 500, us: 745.69987 } },
    place: { kind: 'percent', default: 0.4, min: 0, max: 1, step: { metric: 0.01, us: 0.01 } },
    change: {
      kind: 'percent',
      default: 0.1,
      min: -0.15,
      max: 0.15,
      step: { metric: 0.01, us: 0.01 },
    },
    exponent: {
      kind: 'ratio',
      default: lifeExponent.usual,
      min: lifeExponent.low,
      max: lifeExponent.high,
      step: { metric: 1, us: 1 },
    },
  },
  outputs: OUTPUTS,
  constants: {
    youngsModulus,
    density,
    yieldStrength,
    edgeFactor,
    edgeSpread: EDGE_SPREAD,
    ...extremes,
    ...unequal,
    ...widths,
  },
  evaluate: ({ over, place, change, exponent, ...setting }) => ({
    ...faces(setting, over === 'endless'),
    ...lap(setting, place),
    centrifugal: centrifugalStress({ density, speed: setting.speed }),
    perThickness: setting.wheelDiameter / setting.thickness,
    thicknessLife: relativeLife(setting, 'thickness', change, exponent),
    tensionLife: relativeLife(setting, 'tension', change, exponent),
    wheelLife: relativeLife(setting, 'wheelDiameter', change, exponent),
  }),
});
