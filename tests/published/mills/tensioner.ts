/** What tensions a mill: screw, piston, disc springs, and the turns it takes. */

import { discDeflection } from '../../../src/core/loop/disc-spring.ts';
import { stackStiffness, stackTravel } from '../../../src/core/loop/disc-stack.ts';
import { pistonArea, pressureForThrust } from '../../../src/core/loop/hydraulic.ts';
import { collarTorque } from '../../../src/core/screw/collar.ts';
import { raisingTorqueHandbook } from '../../../src/core/screw/handbook.ts';
import { flankFactor, leadAngle } from '../../../src/core/screw/shape.ts';
import { torqueForStress } from '../../../src/core/screw/tensioner.ts';
import {
  efficiency,
  loweringTorque,
  raisingTorque,
  type Screw,
  selfLockingFriction,
  threadRaisingTorque,
} from '../../../src/core/screw/torque.ts';
import {
  efficiencyFromTwoTorques,
  thrustEstimateFromTwoTorques,
} from '../../../src/core/screw/two-torques.ts';
import { seriesStiffness, turnsForForce, wheelTravelPerTurn } from '../../../src/core/turns.ts';
import { inDegrees, type Mill, type MillFigures } from './mill.ts';

/** Springs that are not straight in force are pressed from nothing, the rest by their stiffness. */
function wheelTravel({ wheelForce, bandStiffness, n, stack, ...mill }: Mill): number {
  if (stack === undefined)
    return wheelForce / seriesStiffness([bandStiffness, mill.supportStiffness]);
  const stiff = seriesStiffness([bandStiffness, n('kf')]);
  return wheelForce / stiff + stackTravel(stack, wheelForce);
}

function threadFigures(screw: Screw, thrust: number): MillFigures {
  return {
    'd2 pitch diameter (mm)': screw.meanDiameter * 1e3,
    'lead (mm)': screw.lead * 1e3,
    'lambda lead angle (deg)': inDegrees(leadAngle(screw)),
    'alpha_n normal flank angle (deg)': inDegrees(Math.acos(1 / flankFactor(screw))),
    'd_c collar mean (mm)': screw.collarDiameter * 1e3,
    'Q screw thrust (N)': thrust,
    'thread torque, tighten (N m)': threadRaisingTorque(screw, thrust),
    'collar torque (N m)': collarTorque(screw, thrust),
    'mu needed to self-lock (thread alone)': selfLockingFriction(screw),
    'e efficiency, tighten': efficiency(screw),
  };
}

function torqueFigures(screw: Screw, thrust: number): MillFigures {
  const [up, down] = [raisingTorque(screw, thrust), loweringTorque(screw, thrust)];
  const handbook = raisingTorqueHandbook(screw, thrust);
  const both = { tighteningTorque: up, looseningTorque: down };
  return {
    'tighten torque above drag (N m)': up,
    'same by the sec-alpha form (N m)': handbook,
    'sec form - normal form (ppm)': (handbook / up - 1) * 1e6,
    'loosen torque above drag (N m)': down,
    'e from the two torques, (Tu-Tl)/(2Tu)': efficiencyFromTwoTorques(both),
    'thrust from the two torques, pi(Tu-Tl)/lead (N)': thrustEstimateFromTwoTorques(
      both,
      screw.lead,
    ),
  };
}

function turnFigures(mill: Mill, screw: Screw): MillFigures {
  const { n, area, halfAngle, wheelForce } = mill;
  const drive = { lead: screw.lead, advantage: n('adv') };
  const tensioner = { ...drive, efficiency: efficiency(screw), dragTorque: n('Td') };
  const travel = wheelTravel(mill);
  return {
    'drag torque (N m)': n('Td'),
    'wrench for target, from theory (N m)': torqueForStress(
      tensioner,
      { area, strandHalfAngle: halfAngle },
      n('target'),
    ),
    'wheel travel, zero tension to target (mm)': travel * 1e3,
    'turns, zero tension to target': travel / wheelTravelPerTurn(drive),
    'turns if only the band stretched': turnsForForce({
      ...drive,
      wheelForce,
      stiffness: mill.bandStiffness,
    }),
  };
}

function pistonFigures(mill: Mill): MillFigures {
  const { n, thrust } = mill;
  const cylinder = { bore: n('Dp'), sealFriction: n('Fs') };
  return {
    'A_piston (mm^2)': pistonArea(cylinder) * 1e6,
    'pressure for target, pumping up (MPa)': pressureForThrust(cylinder, thrust, 'pumping') / 1e6,
    'pressure equal to seal friction (MPa)': pressureForThrust(cylinder, 0, 'pumping') / 1e6,
    'piston travel, zero tension to target (mm)': wheelTravel(mill) * 1e3,
  };
}

function stackFigures({ stack, wheelForce }: Mill): MillFigures {
  if (stack === undefined) return {};
  return {
    'disc: deflection of one (mm)': discDeflection(stack.disc, wheelForce) * 1e3,
    'disc: stack travel (mm)': stackTravel(stack, wheelForce) * 1e3,
    'disc: stack tangent stiffness (MN/m)': stackStiffness(stack, wheelForce) / 1e6,
  };
}

export function tensionerFigures(mill: Mill): MillFigures {
  const { screw, thrust } = mill;
  if (screw === undefined) return pistonFigures(mill);
  return {
    ...threadFigures(screw, thrust),
    ...torqueFigures(screw, thrust),
    ...turnFigures(mill, screw),
    ...stackFigures(mill),
  };
}
