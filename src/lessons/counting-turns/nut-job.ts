/**
 * The job of a mill: from no tension to the stress that it is set to, what gives on the way, and what the last bit of a
 * turn is worth.
 * Units: SI.
 * Source: springs in a row (core/turns), strain energy (core/energy), piston (core/hydraulic), by their own sources.
 */
import { pressureForThrust, supportEnergy } from '../../core/loop.ts';
import { CLICK } from './inputs.ts';
import type { CountingMill } from './mill.ts';
import {
  forceAtTravel,
  forceForStress,
  gives,
  millBandStiffness,
  nutLead,
  nutTorque,
  stressUnder,
} from './nut-travel.ts';

/** A travel in turns of the nut; 0 where nothing is turned. */
export const inTurns = (mill: CountingMill, travel: number): number =>
  nutLead(mill) > 0 ? travel / nutLead(mill) : 0;

/** From no tension to the stress that the mill is set to. */
export function job(mill: CountingMill) {
  const { setting, cylinder } = mill;
  const force = forceForStress(mill, setting);
  const { band, frame, spring } = gives(mill, force);
  const travel = band + frame + spring;
  const click = CLICK * nutLead(mill);
  const before = forceAtTravel(mill, travel - click);
  const clickStress = setting - stressUnder(mill, before);
  return {
    setting,
    jobForce: force,
    jobTorque: nutTorque(mill, force),
    jobBand: band,
    jobFrame: frame,
    jobSpring: spring,
    jobTravel: travel,
    jobStiffness: click > 0 ? (force - before) / click : 0,
    jobTurns: inTurns(mill, travel),
    bandOnlyTurns: inTurns(mill, band),
    frameShare: frame / travel,
    springShare: spring / travel,
    clickStress,
    clickShare: clickStress / setting,
    bandEnergy: supportEnergy(force, millBandStiffness(mill)),
    springEnergy: mill.spring.kind === 'coil' ? supportEnergy(force, mill.spring.stiffness) : 0,
    settingPressure: cylinder ? pressureForThrust(cylinder, force, 'pumping') : 0,
    sealPressure: cylinder ? pressureForThrust(cylinder, 0, 'pumping') : 0,
    sealStress: cylinder ? stressUnder(mill, cylinder.sealFriction) : 0,
  };
}
