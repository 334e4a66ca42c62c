/**
 * The names, kinds and symbols of what the model `counting-turns` gives.
 * Units: SI.
 * Source: definition.
 */

import type { Ink, OutputSpec } from '../../models/define-model.ts';
import type { QuantityKind } from '../../units/kinds.ts';

const written =
  (ink: Ink) =>
  (kind: QuantityKind, label: string, symbol = ''): OutputSpec => ({ kind, symbol, label, ink });

const hand = written('hand');
const steel = written('steel');
const plain = written('plain');

/** Every output of the model. */
export const OUTPUTS = {
  turns: hand('turns', 'turns of the nut', 'n'),
  lead: plain('lengthPerTurn', 'lead of the screw', 'l'),
  torque: hand('torque', 'torque on the nut', 'M'),
  travel: hand('length', 'travel of nut or piston', 'x'),
  slackTravel: plain('length', 'slack taken up so far', 'x_0'),
  bandTravel: steel('length', 'give of the band', 'x_b'),
  frameTravel: plain('length', 'give of the frame', 'x_f'),
  springTravel: plain('length', 'give of the spring', 'x_s'),
  slackTurns: plain('turns', 'turns that went into slack'),
  bandTurns: steel('turns', 'turns that went into the band'),
  frameTurns: plain('turns', 'turns that went into the frame'),
  springTurns: plain('turns', 'turns that went into the spring'),
  wheelForce: plain('force', 'force on the wheel', 'F_w'),
  stress: steel('stress', 'stress in the steel', '\\sigma'),
  bandOnlyStress: steel('stress', 'stress if only the band gave'),
  washerShare: plain('percent', 'how far the disc washers are pressed flat'),
  area: plain('area', 'section of one strand', 'A'),
  loopLength: plain('longLength', 'length of the band', 'L'),
  youngsModulus: plain('modulus', 'Young’s modulus', 'E'),
  bandStiffness: steel('stiffness', 'stiffness of the band', 'k_b'),
  frameStiffness: plain('stiffness', 'stiffness of the frame', 'k_f'),
  setting: steel('stress', 'stress that this mill is set to', '\\sigma'),
  jobForce: plain('force', 'force on the wheel at the setting', 'F_w'),
  jobTorque: hand('torque', 'torque at the setting', 'M'),
  jobBand: steel('length', 'give of the band at the setting', 'x_b'),
  jobFrame: plain('length', 'give of the frame at the setting', 'x_f'),
  jobSpring: plain('length', 'give of the spring at the setting', 'x_s'),
  jobTravel: plain('length', 'travel from no tension to the setting'),
  jobStiffness: plain('stiffness', 'stiffness of everything near the setting', 'k'),
  jobTurns: hand('turns', 'turns from no tension to the setting', 'n'),
  bandOnlyTurns: steel('turns', 'turns if only the band gave'),
  frameShare: plain('percent', 'share of the frame in that'),
  springShare: plain('percent', 'share of the spring in that'),
  slackInTurns: plain('turns', 'all of the slack in turns'),
  totalTurns: hand('turns', 'turns from slack to the setting', 'n'),
  clickStress: steel('stress', 'stress of the last 1/24 of a turn'),
  clickShare: plain('percent', 'that as a share of the stress'),
  borrowedTurns: hand('turns', 'turns with the long soft spring in between', 'n'),
  borrowedShare: plain('percent', 'what 1/24 of a turn is then worth'),
  bandEnergy: steel('energy', 'energy in the band at the setting'),
  springEnergy: plain('energy', 'energy in the spring at the setting'),
  settingPressure: hand('pressure', 'pressure at the setting', 'p'),
  sealPressure: plain('pressure', 'pressure that only moves the seal'),
  sealStress: plain('stress', 'stress that the seal may hold back'),
  readStress: steel('stress', 'rise of the stress by the dial', '\\Delta\\sigma'),
  readForce: plain('force', 'rise of the force on the wheel', '\\Delta F_w'),
  nutTravel: hand('length', 'travel of the nut between the readings', '\\Delta n\\,l'),
  bandWay: steel('length', 'way of the wheel by the dial', 'x_b'),
  frameGive: plain('length', 'what is left for the frame', 'x_f'),
  frameQuotient: plain('stiffness', 'stiffness of the frame by the formula', 'k_f'),
  giveDoubt: plain('length', 'what that may be off by'),
  foundTotal: plain('stiffness', 'stiffness of everything together', 'k'),
  resolved: plain('count', 'whether the readings show the frame'),
  frameFound: plain('stiffness', 'stiffness of the frame, found', 'k_f'),
  frameLow: plain('stiffness', 'the least that it may be'),
  frameHigh: plain('stiffness', 'the most that it may be'),
  rigLoopLength: plain('longLength', 'length of the band', 'L'),
  rigLead: plain('lengthPerTurn', 'lead of the screw', 'l'),
  gaugeLength: plain('length', 'gauge length', 'L_0'),
  rimFrictionLow: plain('ratio', 'least friction on the rims'),
  rimFrictionHigh: plain('ratio', 'most friction on the rims'),
  slipperyExcess: plain('percent', 'stiffer before rolling round, with the least friction'),
  gripExcess: plain('percent', 'stiffer before rolling round, with the most friction'),
  lockedExcess: plain('percent', 'stiffer if nothing slips'),
} as const;
