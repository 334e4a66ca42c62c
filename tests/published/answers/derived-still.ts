/** The band at rest: units, stretch, section, loop, stiffness, turns, warmth. */

import { apparentStressThermal, wheelForceDrift } from '../../../src/core/drift.ts';
import { elongation, poissonChange, strain, stress } from '../../../src/core/elasticity.ts';
import {
  bandStiffness,
  bandStiffnessLocked,
  wrapEffectiveLength,
} from '../../../src/core/loop/band-stiffness.ts';
import { loopLength, loopLengthEqual, strandHalfAngle } from '../../../src/core/loop/geometry.ts';
import { sectionArea, strandForce, wheelForce } from '../../../src/core/section.ts';
import { frameStiffness, seriesStiffness, turnsForForce } from '../../../src/core/turns.ts';
import { siValue } from '../../../src/units/conversions.ts';
import { UNITS } from '../../../src/units/reading/table.ts';
import { numbersAt } from '../cases.ts';
import type { DerivedAnswers, Reader } from '../derived-cases.ts';

const wheelsOf = (n: Reader) => ({
  wheelDiameter1: n('D1'),
  wheelDiameter2: n('D2'),
  centreDistance: n('C'),
});

/** Slope of the loop's length over the centre distance, by a step either way. */
function loopSlope(n: Reader): number {
  const step = 1e-4;
  const at = (centreDistance: number) =>
    loopLength({ ...wheelsOf(n), centreDistance, thickness: n('t') });
  return (at(n('C') + step) - at(n('C') - step)) / (2 * step);
}

const steelOf = (n: Reader) => ({ youngsModulus: n('E'), area: n('A') });

const warmedMill = (n: Reader) => ({
  bandStiffness: n('kBand'),
  supportStiffness: n('kSupport'),
  strandHalfAngle: n('beta'),
  band: { expansion: n('alpha'), temperatureChange: n('dTband'), loopLength: n('L') },
  frame: { expansion: n('alphaFrame'), temperatureChange: n('dTframe'), centreDistance: n('C') },
  wheels: { expansion: n('alphaWheel'), temperatureChange: n('dTwheel'), diameter: n('D') },
});

export const stillAnswers: DerivedAnswers = {
  'unit.psi': () => siValue(1, UNITS.psi.factor),
  'unit.ftlbf': () => siValue(1, UNITS['ft·lbf'].factor),
  'unit.inlbf': () => siValue(1, UNITS['in·lbf'].factor),
  'unit.in': (n) => siValue(n('value_in'), UNITS.in.factor),
  strain: (n) => strain({ elongation: n('dL'), gaugeLength: n('L0') }),
  stressFromElongation: (n) => stress({ elongation: n('dL'), gaugeLength: n('L0') }, n('E')),
  elongationForStress: (n) =>
    elongation({ stress: n('stress'), youngsModulus: n('E'), gaugeLength: n('L0') }),
  poissonChange: (n) =>
    poissonChange({
      stress: n('stress'),
      youngsModulus: n('E'),
      poissonsRatio: n('nu'),
      size: n('dim'),
    }),
  bandArea: (n) => sectionArea({ width: n('width'), thickness: n('thickness') }),
  strandForce: (n) => strandForce(n('stress'), n('area')),
  wheelAngle: (n) => strandHalfAngle(wheelsOf(n)),
  wheelForce: (n) => wheelForce(n('T'), n('beta')),
  loopLengthEqual: (n) =>
    loopLengthEqual({ wheelDiameter: n('D'), centreDistance: n('C'), thickness: n('t') }),
  loopLength: (n) => loopLength({ ...wheelsOf(n), thickness: n('t') }),
  'loopLength.derivative': loopSlope,
  kBand: (n) => bandStiffness(steelOf(n), n('L'), n('beta')),
  kBandLocked: (n) => bandStiffnessLocked(steelOf(n), n('strand'), n('beta')),
  wrapEffectiveLength: (n) =>
    wrapEffectiveLength(
      { wheelDiameter1: n('D'), wheelDiameter2: n('D'), centreDistance: n('C') },
      n('mu'),
    ),
  kSeries: (_, inputs) => seriesStiffness(numbersAt(inputs, 'k')),
  turnsForForce: (n) => turnsForForce({ lead: n('lead'), wheelForce: n('F'), stiffness: n('k') }),
  frameStiffness: (n) =>
    frameStiffness(
      { lead: n('lead'), turns: n('n'), wheelForce: n('F') },
      { bandStiffness: n('kb') },
    ),
  tensionLossWheel: (n) => wheelForceDrift(warmedMill(n)),
  apparentStressThermal: (n) =>
    apparentStressThermal({
      youngsModulus: n('E'),
      band: { expansion: n('alphaBand'), temperatureChange: n('dTband') },
      bar: { expansion: n('alphaBar'), temperatureChange: n('dTbar') },
    }),
};
