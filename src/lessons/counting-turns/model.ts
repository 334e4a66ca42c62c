/**
 * Counting turns: what the travel of a nut or a piston is spent on, slack first, then band, frame and spring; and back
 * from turns and stretch to the frame.
 * Units: SI.
 * Source: springs in a row (core/turns) by its own sources; the mills are invented. Slack of a few millimetres at the
 * wheel: common practice, no source.
 */
import { hydraulicThrust, loopLengthEqual } from '../../core/loop.ts';
import { defineModel } from '../../models/define-model.ts';
import { frameFromTurns, RIG, TURN_STEPS } from './frame-from-turns.ts';
import { INPUTS } from './inputs.ts';
import { type CountingMill, STEEL } from './mill.ts';
import { MILLS } from './mills.worked.ts';
import { inTurns, job } from './nut-job.ts';
import {
  forceAtTravel,
  gives,
  giveTogether,
  millArea,
  millBandStiffness,
  nutLead,
  nutTorque,
  stressUnder,
} from './nut-travel.ts';
import { OUTPUTS } from './outputs.ts';
import { borrowed, catches } from './start.worked.ts';

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

/** What of a mill the reader cannot change. */
function standing(mill: CountingMill) {
  return {
    ...job(mill),
    lead: nutLead(mill),
    area: millArea(mill),
    loopLength: loopLengthEqual(mill),
    bandStiffness: millBandStiffness(mill),
    frameStiffness: mill.frameStiffness,
  };
}

const STANDING = {
  stiffFrame: standing(MILLS.stiffFrame),
  discWashers: standing(MILLS.discWashers),
  softSpring: standing(MILLS.softSpring),
  oil: standing(MILLS.oil),
} as const;

/** Turns or pressure on one of four mills, and its slack; turns and stretch between two readings on the first. */
export const countingTurns = defineModel({
  name: 'counting-turns',
  inputs: INPUTS,
  outputs: OUTPUTS,
  constants: {
    ...borrowed,
    ...catches,
    youngsModulus: STEEL.youngsModulus,
    rigLoopLength: STANDING.stiffFrame.loopLength,
    rigLead: STANDING.stiffFrame.lead,
    gaugeLength: RIG.gaugeLength,
  },
  evaluate: ({ tensioner, slack, pressure, turnsStiff, turnsDiscs, turnsSoft, ...read }) => {
    const mill = MILLS[tensioner];
    const turns = {
      stiffFrame: turnsStiff,
      discWashers: turnsDiscs,
      softSpring: turnsSoft,
      oil: 0,
    };
    const { jobTravel } = STANDING[tensioner];
    return {
      ...STANDING[tensioner],
      ...present(mill, turns[tensioner], pressure, slack),
      slackInTurns: inTurns(mill, slack),
      totalTurns: inTurns(mill, slack + jobTravel),
      ...frameFromTurns({
        turns: read.readTurns,
        stretch: read.readStretch,
        turnStep: TURN_STEPS[read.turnStep],
      }),
    };
  },
});
