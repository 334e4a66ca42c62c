/**
 * The stiff spring: a strip of band steel pulled between two clamps, its stretch read over a gauge length.
 * The strip is the classroom rig's; it yields when pulled far enough, and then does not come back.
 * Units: SI.
 * Source: Hooke's law (core/elasticity); elastic limit of hardened band steel 1100 to 1500 MPa, from memory.
 */
import { bandSteel } from '../../core/assumptions.ts';
import { permanentStrain, strain, stress, stressAtStrain } from '../../core/elasticity.ts';
import { sectionArea, strandForce } from '../../core/section.ts';
import { defineModel } from '../../models/define-model.ts';
import { RIG } from '../../models/mills/classroom-rig.ts';

/** The pull that the lesson asks about first: the stretch that its guess should come to. */
export const asked = { stretch: 0.18e-3 } as const;

/** The rig's strip and its steel. */
export const STRIP = {
  width: RIG.width,
  thickness: RIG.thickness,
  youngsModulus: RIG.youngsModulus,
  modulusHalfWidth: bandSteel.youngsModulusHalfWidth,
  elasticLimit: 1200e6,
  hardeningShare: 0.04,
} as const;

const { youngsModulus, elasticLimit } = STRIP;
const area = sectionArea(STRIP);
const STANDARD_GRAVITY = 9.80665; // m/s², by definition
const SMALL_READING = { metric: 1e-5, us: 2.54e-5 } as const; // 0.01 mm, 0.001 in

/** Stretch over a gauge length, to strain, stress and force; and what is left after letting go. */
export const stiffSpring = defineModel({
  name: 'stiff-spring',
  inputs: {
    stretch: {
      kind: 'stretch',
      default: 0.1e-3,
      min: 0,
      max: 2.4e-3,
      step: { metric: 1e-5, us: 1.27e-5 },
    },
    gaugeLength: {
      kind: 'length',
      default: 0.3,
      min: 0.2,
      max: 0.9,
      step: { metric: 0.01, us: 0.0127 },
    },
    released: { options: ['held', 'letGo'], default: 'held', counted: ['held', 'letGo'] },
  },
  outputs: {
    strain: 'strain',
    stress: 'stress',
    force: 'force',
    hangingMass: 'mass',
    hookeStress: 'stress',
    shareOfLimit: 'percent',
    limitStretch: 'stretch',
    leftStretch: 'stretch',
    perHundredth: 'stress',
    perThousandth: 'stress',
    youngsModulus: 'modulus',
    modulusLow: 'modulus',
    modulusHigh: 'modulus',
    area: 'area',
    elasticLimit: 'stress',
    cautiousLimit: 'stress',
  },
  constants: {
    youngsModulus,
    modulusLow: youngsModulus - STRIP.modulusHalfWidth,
    modulusHigh: youngsModulus + STRIP.modulusHalfWidth,
    area,
    elasticLimit,
    cautiousLimit: bandSteel.yieldStrength,
  },
  evaluate: ({ stretch, gaugeLength }) => {
    const stretched = strain({ elongation: stretch, gaugeLength });
    const inSteel = stressAtStrain(stretched, STRIP);
    const force = strandForce(inSteel, area);
    const stressOf = (elongation: number) => stress({ elongation, gaugeLength }, youngsModulus);
    return {
      strain: stretched,
      stress: inSteel,
      force,
      hangingMass: force / STANDARD_GRAVITY,
      hookeStress: stressOf(stretch),
      shareOfLimit: inSteel / elasticLimit,
      limitStretch: (elasticLimit / youngsModulus) * gaugeLength,
      leftStretch: permanentStrain(stretched, STRIP) * gaugeLength,
      perHundredth: stressOf(SMALL_READING.metric),
      perThousandth: stressOf(SMALL_READING.us),
    };
  },
});
