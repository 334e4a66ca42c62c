/**
 * Counting turns: what the travel of a nut or a piston is spent on, slack first, then band, frame and spring; and back
 * from turns and stretch to the frame.
 * Units: SI.
 * Source: springs in a row (core/turns) by its own sources; the mills are invented. Slack of a few millimetres at the
 * wheel: common practice, no source.
 */
import {
  bandStiffness,
  bandStiffnessBeforeRolling,
  bandStiffnessLocked,
} from '../core/band-stiffness.ts';
import { supportEnergy } from '../core/energy.ts';
import { hydraulicThrust, pressureForThrust } from '../core/hydraulic.ts';
import { loopLengthEqual } from '../core/loop.ts';
import { type CountingMill, MILLS, millAt, STEEL } from './counting-mills.ts';
import { CLICK, INPUTS } from './counting-turns-inputs.ts';
import { OUTPUTS } from './counting-turns-outputs.ts';
import { defineModel } from './define-model.ts';
import { frameFromTurns, RIG, TURN_STEPS } from './frame-from-turns.ts';
import {
  forceAtTravel,
  forceForStress,
  gives,
  giveTogether,
  millArea,
  millBandStiffness,
  nutLead,
  nutTorque,
  stressUnder,
} from './nut-travel.ts';

const inTurns = (mill: CountingMill, travel: number) =>
  nutLead(mill) > 0 ? travel / nutLead(mill) : 0;

/** Travel and force of a nut after so many turns, or of a piston that moves once its seal lets go. */
function moved(mill: CountingMill, turns: number, pressure: number, slack: number) {
  if (mill.cylinder) {
    const force = hydraulicThrust(mill.cylinder, pressure, 'pumping');
    return { force, travel: force > 0 ? slack + giveTogether(mill, force) : 0 };
  }
  const travel = turns * nutLead(mill);
  return { force: forceAtTravel(mill, travel - slack), travel };
}

/** Where the travel of the nut or the piston has gone so far. */
function present(mill: CountingMill, turns: number, pressure: number, slack: number) {
  const { force, travel } = moved(mill, turns, pressure, slack);
  const { band, frame, spring } = gives(mill, force);
  const slackTravel = Math.min(slack, travel);
  return {
    turns: inTurns(mill, travel),
    torque: nutTorque(mill, force),
    travel,
    slackTravel,
    bandTravel: band,
    frameTravel: frame,
    springTravel: spring,
    slackTurns: inTurns(mill, slackTravel),
    bandTurns: inTurns(mill, band),
    frameTurns: inTurns(mill, frame),
    springTurns: inTurns(mill, spring),
    wheelForce: force,
    stress: stressUnder(mill, force),
    bandOnlyStress: stressUnder(mill, Math.max(0, travel - slack) * millBandStiffness(mill)),
    washerShare: washerShare(mill, spring),
  };
}

function washerShare({ spring }: CountingMill, travel: number): number {
  if (spring.kind !== 'discs') return 0;
  return travel / (spring.stack.groupsInSeries * spring.stack.disc.coneHeight);
}

/** From no tension to the stress that the mill is set to. */
function job(mill: CountingMill, slack: number) {
  const { setting, cylinder } = mill;
  const force = forceForStress(mill, setting);
  const { band, frame, spring } = gives(mill, force);
  const travel = band + frame + spring;
  const before = forceAtTravel(mill, travel - CLICK * nutLead(mill));
  const clickStress = setting - stressUnder(mill, before);
  return {
    setting,
    jobForce: force,
    jobTorque: nutTorque(mill, force),
    jobBand: band,
    jobFrame: frame,
    jobSpring: spring,
    jobTravel: travel,
    jobTurns: inTurns(mill, travel),
    bandOnlyTurns: inTurns(mill, band),
    frameShare: frame / travel,
    springShare: spring / travel,
    slackInTurns: inTurns(mill, slack),
    totalTurns: inTurns(mill, slack + travel),
    clickStress,
    clickShare: clickStress / setting,
    bandEnergy: supportEnergy(force, millBandStiffness(mill)),
    springEnergy: mill.spring.kind === 'coil' ? supportEnergy(force, mill.spring.stiffness) : 0,
    settingPressure: cylinder ? pressureForThrust(cylinder, force, 'pumping') : 0,
    sealPressure: cylinder ? pressureForThrust(cylinder, 0, 'pumping') : 0,
    sealStress: cylinder ? stressUnder(mill, cylinder.sealFriction) : 0,
  };
}

/** The job of the first mill with the coil spring of the third between its nut and its frame. */
function borrowedSpring() {
  const mill: CountingMill = { ...MILLS[0], spring: MILLS[2].spring };
  const { jobTurns, clickShare } = job(mill, 0);
  return { borrowedTurns: jobTurns, borrowedShare: clickShare };
}

/** How much stiffer the first mill's band is before it is rolled round, and if nothing slips. */
function catches() {
  const [mill] = MILLS;
  const steel = { ...STEEL, area: millArea(mill) };
  const { wheelDiameter, centreDistance } = mill;
  const wheels = { wheelDiameter1: wheelDiameter, wheelDiameter2: wheelDiameter, centreDistance };
  const rolled = bandStiffness(steel, loopLengthEqual(mill));
  return {
    slipperyExcess: bandStiffnessBeforeRolling(steel, wheels, 0.2) / rolled - 1,
    gripExcess: bandStiffnessBeforeRolling(steel, wheels, 0.3) / rolled - 1,
    lockedExcess: bandStiffnessLocked(steel, centreDistance) / rolled - 1,
  };
}

/** Turns or pressure on one of four mills, and its slack; turns and stretch between two readings on the first. */
export const countingTurns = defineModel({
  name: 'counting-turns',
  inputs: INPUTS,
  outputs: OUTPUTS,
  evaluate: (inputs) => {
    const { tensioner, slack, pressure, turnsStiff, turnsDiscs, turnsSoft } = inputs;
    const mill = millAt(tensioner);
    const turns = [turnsStiff, turnsDiscs, turnsSoft][tensioner] ?? 0;
    return {
      ...present(mill, turns, pressure, slack),
      ...job(mill, slack),
      ...frameFromTurns({
        turns: inputs.readTurns,
        stretch: inputs.readStretch,
        turnStep: TURN_STEPS[inputs.turnStep] ?? TURN_STEPS[0],
      }),
      ...borrowedSpring(),
      ...catches(),
      lead: nutLead(mill),
      area: millArea(mill),
      loopLength: loopLengthEqual(mill),
      youngsModulus: STEEL.youngsModulus,
      bandStiffness: millBandStiffness(mill),
      frameStiffness: mill.frameStiffness,
      rigLoopLength: loopLengthEqual(MILLS[0]),
      rigLead: nutLead(MILLS[0]),
      gaugeLength: RIG.gaugeLength,
    };
  },
});
