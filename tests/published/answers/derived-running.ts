/** The band in motion: wheels, grip, life, energy. */
import {
  coilEnergy,
  kineticEnergy,
  recoilSpeed,
  stretchEnergy,
} from '../../../src/core/loop/energy.ts';
import { basquinLifeRatio, bendsPerHour, swtLifeRatio } from '../../../src/core/wheel/life.ts';
import {
  centrifugalShare,
  maxPower,
  slipMargin,
  strandsConstantForce,
  strandsUnderPower,
} from '../../../src/core/wheel/running.ts';
import {
  edgeBendingFactor,
  meanBendingFactor,
  widthParameter,
} from '../../../src/core/wheel/wide-strip.ts';
import { bendingStress, centrifugalStress } from '../../../src/core/wheel.ts';
import type { DerivedAnswers, Reader } from '../derived-cases.ts';

const bandOf = (n: Reader) => ({ massPerLength: n('m'), speed: n('v') });
const gripOf = (n: Reader) => ({ friction: n('mu'), wrap: n('theta') });
const strandsOf = (n: Reader) =>
  strandsUnderPower({ meanForce: n('T0'), power: n('P'), speed: n('v') });

export const runningAnswers: DerivedAnswers = {
  bendStress: (n) =>
    bendingStress({ youngsModulus: n('E'), thickness: n('t'), wheelDiameter: n('D') }),
  anticlasticLambda: (n) =>
    widthParameter({
      width: n('b'),
      bendRadius: n('R'),
      thickness: n('t'),
      poissonsRatio: n('nu'),
    }),
  bendMeanFactor: (n) => meanBendingFactor(n('lambda'), n('nu')),
  bendEdgeFactor: (n) => edgeBendingFactor(n('lambda'), n('nu')),
  centrifugalStress: (n) => centrifugalStress({ density: n('rho'), speed: n('v') }),
  centrifugalShare: (n) =>
    centrifugalShare({ bandStiffness: n('kBand'), supportStiffness: n('kSupport') }),
  'tightSlack.tight': (n) => strandsOf(n).tight,
  'tightSlack.slack': (n) => strandsOf(n).slack,
  'strandsConstantForce.tight': (n) =>
    strandsConstantForce({
      wheelForce: n('F'),
      power: n('P'),
      band: bandOf(n),
      strandHalfAngle: n('beta'),
    }).tight,
  slipMargin: (n) => slipMargin({ tight: n('T1'), slack: n('T2') }, bandOf(n), gripOf(n)),
  maxPower: (n) => maxPower(n('T0'), bandOf(n), gripOf(n)),
  cyclesPerHour: (n) => bendsPerHour({ speed: n('v'), loopLength: n('L'), wheels: n('wheels') }),
  lifeRatio: (n) => basquinLifeRatio(n('s1'), n('s2'), n('m')),
  swtLifeRatio: (n) =>
    swtLifeRatio(
      { peak: n('smax2'), amplitude: n('sa2') },
      { peak: n('smax1'), amplitude: n('sa1') },
      n('m'),
    ),
  tensionEnergy: (n) =>
    stretchEnergy({
      stress: n('stress'),
      youngsModulus: n('E'),
      area: n('A'),
      loopLength: n('L'),
    }),
  coilEnergy: (n) =>
    coilEnergy({
      youngsModulus: n('E'),
      thickness: n('t'),
      radius: n('R'),
      area: n('A'),
      loopLength: n('L'),
    }),
  kineticEnergy: (n) =>
    kineticEnergy({ massPerLength: n('rho') * n('A'), loopLength: n('L'), speed: n('v') }),
  recoilSpeed: (n) =>
    recoilSpeed({ stress: n('stress'), youngsModulus: n('E'), density: n('rho') }),
};
