/** From handle to thrust: screws, threads, the two torques, oil, disc springs, efficiency. */

import { discForce } from '../../../src/core/loop/disc-spring.ts';
import { hydraulicThrust } from '../../../src/core/loop/hydraulic.ts';
import { newCollarDiameter, wornCollarDiameter } from '../../../src/core/screw/collar.ts';
import { loweringTorqueHandbook, raisingTorqueHandbook } from '../../../src/core/screw/handbook.ts';
import { efficiencyFromSlope, torqueForStress } from '../../../src/core/screw/tensioner.ts';
import {
  loweringTorque,
  raisingTorque,
  screwEfficiency,
  selfLockingFriction,
} from '../../../src/core/screw/torque.ts';
import {
  efficiencyFromTwoTorques,
  frictionFromTwoTorques,
  thrustEstimateFromTwoTorques,
  thrustFromTwoTorques,
} from '../../../src/core/screw/two-torques.ts';
import {
  acmePitchDiameter2G,
  pitchDiameter,
  type ThreadForm,
} from '../../../src/core/threads/form.ts';
import { siValue } from '../../../src/units/conversions.ts';
import { UNITS } from '../../../src/units/reading/table.ts';
import type { DerivedAnswers, Reader } from '../derived-cases.ts';

const inch = siValue(1, UNITS.in.factor);

const shapeOf = (n: Reader) => ({ meanDiameter: n('dm'), lead: n('lead'), halfAngle: n('alpha') });

const screwOf = (n: Reader) => ({
  ...shapeOf(n),
  threadFriction: n('mu'),
  collarFriction: n('muc'),
  collarDiameter: n('dc'),
});

const torquesOf = (n: Reader) => ({ tighteningTorque: n('Tu'), looseningTorque: n('Tl') });
const ringOf = (n: Reader) => ({ outerDiameter: n('Do'), innerDiameter: n('Di') });
const bandOf = (n: Reader) => ({ area: n('A'), strandHalfAngle: n('beta') });

/** Without a diameter the friction is unknown, and the estimate stands. */
function thrust(n: Reader, inputs: Readonly<Record<string, unknown>>): number {
  if (inputs['dm'] === null) return thrustEstimateFromTwoTorques(torquesOf(n), n('lead'));
  const thread = { meanDiameter: n('dm'), lead: n('lead'), halfAngle: 0 };
  return thrustFromTwoTorques(torquesOf(n), { ...thread, threadFriction: n('muEff') });
}

const discOf = (n: Reader) => ({
  outerDiameter: n('De'),
  innerDiameter: n('Di'),
  thickness: n('t'),
  coneHeight: n('h0'),
  youngsModulus: n('E'),
  poissonsRatio: n('nu'),
});

export const screwCaseAnswers: DerivedAnswers = {
  pitchDia: (n, { form }) =>
    pitchDiameter(form as ThreadForm, { majorDiameter: n('d'), pitch: n('P') }),
  acmeMaxPitchDia2G: (n) =>
    acmePitchDiameter2G({ majorDiameter: n('d_in') * inch, pitch: inch / n('tpi') }),
  screwTorque: (n, { raise }) => (raise ? raisingTorque : loweringTorque)(screwOf(n), n('F')),
  'screwTorque.sec': (n, { raise }) =>
    (raise ? raisingTorqueHandbook : loweringTorqueHandbook)(screwOf(n), n('F')),
  screwEff: (n) => screwEfficiency({ thrust: n('F'), lead: n('lead'), torque: n('T') }),
  selfLockMu: (n) => selfLockingFriction(shapeOf(n)),
  collarUniformWear: (n) => wornCollarDiameter(ringOf(n)),
  collarUniformPressure: (n) => newCollarDiameter(ringOf(n)),
  frictionFromTwoTorques: (n) =>
    frictionFromTwoTorques(torquesOf(n), shapeOf(n), {
      collarFriction: n('kappa'),
      collarDiameter: n('dm'),
    }),
  forceFromTwoTorques: thrust,
  effFromTwoTorques: (n) => efficiencyFromTwoTorques(torquesOf(n)),
  hydraulicForce: (n) =>
    hydraulicThrust(
      { bore: n('Dp'), sealFriction: n('sealFriction') },
      n('p'),
      n('stroke') === 1 ? 'pumping' : 'lettingDown',
    ),
  discSpringForce: (n) => discForce(discOf(n), n('s')),
  efficiencyFromSlope: (n) =>
    efficiencyFromSlope({
      slope: n('slope'),
      lead: n('lead'),
      advantage: n('advantage'),
      ...bandOf(n),
    }),
  torqueForStress: (n) =>
    torqueForStress(
      {
        lead: n('lead'),
        efficiency: n('efficiency'),
        dragTorque: n('Td'),
        advantage: n('advantage'),
      },
      bandOf(n),
      n('stress'),
    ),
};
