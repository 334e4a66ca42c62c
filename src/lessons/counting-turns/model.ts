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
import type { CountingMill } from './mill.ts';
import { millAt, STEEL } from './mills.ts';
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
      ...borrowed,
      ...catches,
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
