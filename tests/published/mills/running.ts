/** A mill that runs and cuts: wheels, grip, stress, energy. */

import {
  coilEnergy,
  coilRadius,
  kineticEnergy,
  recoilSpeed,
  stretchEnergy,
  supportEnergy,
} from '../../../src/core/loop/energy.ts';
import { smallerWheelWrap } from '../../../src/core/loop/geometry.ts';
import { massPerLength } from '../../../src/core/span/band-mass.ts';
import { bendsPerHour, peakStress, stressRange } from '../../../src/core/wheel/life.ts';
import {
  centrifugalShare,
  maxPower,
  runningStrandForce,
  runningWheelForce,
  slipMargin,
  strandsUnderPower,
} from '../../../src/core/wheel/running.ts';
import {
  edgeBendingFactor,
  meanBendingFactor,
  widthParameter,
} from '../../../src/core/wheel/wide-strip.ts';
import { bendingStress, centrifugalStress } from '../../../src/core/wheel.ts';
import { type Mill, type MillFigures, steel } from './mill.ts';

const EDGE_FACTOR = 1.05; // what tension leaves of the lift of the edges

const smallerWheel = ({ n }: Mill): number => Math.min(n('D1'), n('D2'));

/** Mass of the band with its teeth, kg/m. */
export const massOf = ({ n }: Mill): number =>
  massPerLength({
    density: steel.density,
    widthOverTeeth: n('W'),
    bodyWidth: n('body'),
    thickness: n('t'),
  });

const bendingOf = (mill: Mill): number =>
  bendingStress({ ...steel, thickness: mill.n('t'), wheelDiameter: smallerWheel(mill) });

function wheelFigures(mill: Mill): MillFigures {
  const { n } = mill;
  const [thickness, bendRadius] = [n('t'), (smallerWheel(mill) + n('t')) / 2];
  const strip = widthParameter({ ...steel, width: n('W'), bendRadius, thickness });
  return {
    'sigma_b smaller wheel (MPa)': bendingOf(mill) / 1e6,
    'D/t smaller wheel': smallerWheel(mill) / n('t'),
    'lambda wide strip': strip,
    'mean wide-strip factor': meanBendingFactor(strip, steel.poissonsRatio),
    'outer-edge factor, band not pressed down': edgeBendingFactor(strip, steel.poissonsRatio),
  };
}

function motionOf(mill: Mill) {
  const { n, bandStiffness, supportStiffness, tension } = mill;
  const band = { massPerLength: massOf(mill), speed: n('v') };
  const share = centrifugalShare({ bandStiffness, supportStiffness });
  const meanForce = runningStrandForce(tension, share, band);
  const strands = strandsUnderPower({ meanForce, power: n('Pw'), speed: n('v') });
  return { band, share, meanForce, strands };
}

function gripFigures(mill: Mill): MillFigures {
  const { n } = mill;
  const { band, share, meanForce, strands } = motionOf(mill);
  const grip = { friction: n('muw'), wrap: smallerWheelWrap(mill.wheels) };
  return {
    'm mass per metre (kg/m)': band.massPerLength,
    'rho v^2 (MPa)': centrifugalStress({ ...steel, speed: n('v') }) / 1e6,
    eta: share,
    'mean strand force, running (N)': meanForce,
    'T1 tight (N)': strands.tight,
    'T2 slack (N)': strands.slack,
    'slip margin': slipMargin(strands, band, grip),
    'power at slip (kW)': maxPower(meanForce, band, grip) / 1e3,
    'wheel (bearing) force, running (N)': runningWheelForce(meanForce, band, mill.halfAngle),
  };
}

function stressFigures(mill: Mill): MillFigures {
  const { n, area, loop } = mill;
  const { strands } = motionOf(mill);
  const bend = { bendingStress: bendingOf(mill), edgeFactor: EDGE_FACTOR };
  const load = { tight: strands.tight, area, ...bend };
  return {
    'peak stress, bending x 1.05 (MPa)': peakStress(load) / 1e6,
    'stress range per wheel pass (MPa)': stressRange(load, strands.slack) / 1e6,
    'bending cycles per hour': bendsPerHour({ speed: n('v'), loopLength: loop }),
  };
}

function energyFigures(mill: Mill): MillFigures {
  const { n, area, loop: loopLength, wheelForce } = mill;
  const stressed = { ...steel, stress: n('target'), area, loopLength };
  const coil = { ...steel, thickness: n('t'), radius: coilRadius(loopLength), loopLength };
  return {
    'energy, stretched band (J)': stretchEnergy(stressed),
    'energy, frame and spring (J)': supportEnergy(wheelForce, mill.supportStiffness),
    'energy, band coiled in three (J)': coilEnergy({ ...coil, area: n('W') * n('t') }),
    'kinetic energy, running band (J)': kineticEnergy({ ...motionOf(mill).band, loopLength }),
    'recoil speed of a broken end (m/s)': recoilSpeed(stressed),
  };
}

export const runningFigures = (mill: Mill): MillFigures => ({
  ...wheelFigures(mill),
  ...gripFigures(mill),
  ...stressFigures(mill),
  ...energyFigures(mill),
});
