/** The span: stiffness against a side force, twist, notes, the press, and the dial over it. */

import { dialTravel, misalignmentFactor } from '../../../src/core/elasticity/dial-reading.ts';
import { airMassPerLength } from '../../../src/core/span/band-mass.ts';
import {
  lateralStiffnessClamped,
  lateralStiffnessPinned,
  type SpanEnds,
} from '../../../src/core/span/beam-under-tension.ts';
import {
  clampedFrequency,
  clampedFrequencySeries,
  pinnedFrequency,
} from '../../../src/core/span/clamped-frequency.ts';
import { pitchFromTension, stringTension, tensionFromPitch } from '../../../src/core/span/pluck.ts';
import { effectiveLength, pressForce } from '../../../src/core/span/press.ts';
import {
  toothTipCompliance,
  torsionFrequency,
  twistingStiffness,
} from '../../../src/core/span/twist.ts';
import { tensionFromPress } from '../../../src/core/span.ts';
import {
  chordShift,
  coilSetLeft,
  coilShift,
  gaugeWeightShift,
} from '../../../src/core/zero/false-zero.ts';
import type { DerivedAnswers, Reader } from '../derived-cases.ts';

const spanOf = (n: Reader) => ({
  tension: n('T'),
  bendingStiffness: n('EI'),
  span: n('s'),
});

const stringOf = (n: Reader) => ({ ...spanOf(n), massPerLength: n('m'), harmonic: n('n') });

/** `ne` counts the end lengths by which the ends shorten the span. */
const endsOf = (n: Reader): SpanEnds =>
  (['wheels', 'guides', 'clamped'] as const)[n('ne')] as SpanEnds;

const soundingOf = (n: Reader) => ({
  massPerLength: n('m'),
  bendingStiffness: n('EI'),
  span: n('s'),
  ends: endsOf(n),
  harmonic: n('n'),
});

const pressedOf = (n: Reader) => ({
  span: n('s'),
  bendingStiffness: n('EI'),
  ends: 'wheels' as const,
  axialStiffness: n('EA'),
  effectiveLength: n('Leff'),
});

const twistedOf = (n: Reader) => ({
  tension: n('T'),
  shearModulus: n('G'),
  width: n('b'),
  thickness: n('t'),
  span: n('s'),
});

const coilOf = (n: Reader) => ({ gaugeLength: n('L0'), coilRadius: n('rho') });

export const spanCaseAnswers: DerivedAnswers = {
  kLatPinned: (n) => lateralStiffnessPinned(spanOf(n)),
  kLatClamped: (n) => lateralStiffnessClamped(spanOf(n)),
  kTorsion: (n) => twistingStiffness(twistedOf(n)),
  toothTipCompliance: (n, { ends }) =>
    toothTipCompliance({
      ...twistedOf(n),
      youngsModulus: n('E'),
      toothOffset: n('e'),
      ends: ends as SpanEnds,
    }).total,
  stringStress: (n) =>
    stringTension({ massPerLength: n('rho'), span: n('s'), harmonic: n('n') }, n('f')),
  pinnedFreq: (n) => pinnedFrequency(stringOf(n)),
  clampedFreqExact: (n) => clampedFrequency(stringOf(n)),
  clampedFreqFletcher: (n) => clampedFrequencySeries(stringOf(n)),
  pluckFreq: (n) => pitchFromTension(soundingOf(n), n('T')),
  pluckTension: (n) => tensionFromPitch(soundingOf(n), n('f')),
  torsionFreq: (n) =>
    torsionFrequency({
      stress: n('stress'),
      density: n('rho'),
      shearModulus: n('G'),
      width: n('b'),
      thickness: n('t'),
      span: n('s'),
      harmonic: n('n'),
    }),
  airAddedMass: (n) => airMassPerLength(n('b'), n('rhoAir')),
  pressDeflectionForce: (n) => pressForce({ ...pressedOf(n), tension: n('T') }, n('d')),
  pressTension: (n) => tensionFromPress({ ...pressedOf(n), force: n('F'), deflection: n('d') }),
  effectiveLoop: (n) =>
    effectiveLength({
      loopLength: n('L'),
      axialStiffness: n('EA'),
      frameStiffness: n('kFrame'),
    }),
  dialTravel: (n, { backwards }) =>
    dialTravel({
      first: n('r0'),
      shown: n('r1'),
      wholeTurns: n('revs'),
      travelPerTurn: n('perRev'),
      runsBackwards: backwards === true,
    }),
  misalignFactor: (n) => misalignmentFactor(n('theta'), n('nu')),
  coilZeroShift: (n) => coilShift(coilOf(n), n('h')),
  chordShift: (n) => chordShift(coilOf(n)),
  coilSetLeft: (n) =>
    coilSetLeft({ endLength: 1 / n('k'), strand: n('s'), from: n('x1'), to: n('x2') }),
  gaugeWeightShift: (n) => gaugeWeightShift({ height: n('h'), weight: n('W'), tension: n('T') }),
};
