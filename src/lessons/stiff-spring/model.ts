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

/** The rig's strip and its steel. */
export const STRIP = {
  width: 0.02,
  thickness: 0.0008,
  youngsModulus: bandSteel.youngsModulus,
  modulusHalfWidth: bandSteel.youngsModulusHalfWidth,
  elasticLimit: 1200e6,
  hardeningShare: 0.04,
} as const;

const STANDARD_GRAVITY = 9.80665; // m/s², by definition
const SMALL_READING = { metric: 1e-5, us: 2.54e-5 } as const; // 0.01 mm, 0.001 in

/** Stretch over a gauge length, to strain, stress and force; and what is left after letting go. */
export const stiffSpring = defineModel({
  name: 'stiff-spring',
  inputs: {
    stretch: {
      kind: 'stretch',
      symbol: '\\Delta L',
      label: 'stretch between the clamps',
      default: 0.1e-3,
      min: 0,
      max: 2.4e-3,
      step: { metric: 1e-5, us: 1.27e-5 },
    },
    gaugeLength: {
      kind: 'length',
      symbol: 'L_0',
      label: 'gauge length',
      default: 0.3,
      min: 0.2,
      max: 0.9,
      step: { metric: 0.01, us: 0.0127 },
    },
    released: {
      kind: 'count',
      symbol: '',
      label: 'the strip is',
      default: 0,
      min: 0,
      max: 1,
      step: { metric: 1, us: 1 },
      options: ['held', 'let go'],
    },
  },
  outputs: {
    strain: { kind: 'strain', symbol: '\\varepsilon', label: 'strain' },
    stress: { kind: 'stress', symbol: '\\sigma', label: 'stress in the steel' },
    force: { kind: 'force', symbol: 'T', label: 'pull' },
    hangingMass: { kind: 'mass', symbol: 'm', label: 'what would hang from it' },
    hookeStress: { kind: 'stress', symbol: 'E\\,\\varepsilon', label: 'stress by Hooke’s law' },
    shareOfLimit: { kind: 'percent', symbol: '', label: 'share of the elastic limit' },
    limitStretch: { kind: 'stretch', symbol: '', label: 'stretch at the elastic limit' },
    leftStretch: { kind: 'stretch', symbol: '', label: 'stretch left after letting go' },
    perHundredth: { kind: 'stress', symbol: '', label: 'stress for 0.01 mm of stretch' },
    perThousandth: { kind: 'stress', symbol: '', label: 'stress for 0.001 in of stretch' },
    youngsModulus: { kind: 'modulus', symbol: 'E', label: 'Young’s modulus', ink: 'plain' },
    modulusLow: { kind: 'modulus', symbol: '', label: 'least usual modulus', ink: 'plain' },
    modulusHigh: { kind: 'modulus', symbol: '', label: 'highest usual modulus', ink: 'plain' },
    area: { kind: 'area', symbol: 'A', label: 'section of the strip', ink: 'plain' },
    elasticLimit: { kind: 'stress', symbol: '', label: 'elastic limit', ink: 'plain' },
  },
  evaluate: ({ stretch, gaugeLength }) => {
    const { youngsModulus, elasticLimit } = STRIP;
    const stretched = strain({ elongation: stretch, gaugeLength });
    const inSteel = stressAtStrain(stretched, STRIP);
    const area = sectionArea(STRIP);
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
      youngsModulus,
      modulusLow: youngsModulus - STRIP.modulusHalfWidth,
      modulusHigh: youngsModulus + STRIP.modulusHalfWidth,
      area,
      elasticLimit,
    };
  },
});
