/**
 * Work of turning a screw while its load rises in a straight line, and the parts of it that friction turns to heat.
 * Units: SI only (J, N·m, N; turns have no unit).
 * Source: work is torque times angle, definition; what the thread does not pass on is heat, derived here.
 */
import { assertAtLeast } from '../assert.ts';
import type { Collar } from './collar.ts';
import { collarTorque } from './collar.ts';
import type { RubbingThread } from './torque.ts';
import { threadRaisingTorque } from './torque.ts';

/** A torque that changes in a straight line with the turns. */
export interface StraightTorque {
  readonly startTorque: number; // N·m, 0 or more
  readonly endTorque: number; // N·m, 0 or more
  readonly turns: number; // 0 or more
}

/**
 * Work of the turns, W = 2π·n·(M₁ + M₂)/2 in J, 0 or more.
 * @throws RangeError unless both torques and the turns are at least 0
 */
export function torqueWork({ startTorque, endTorque, turns }: StraightTorque): number {
  assertAtLeast('startTorque', startTorque, 0, 'N·m');
  assertAtLeast('endTorque', endTorque, 0, 'N·m');
  assertAtLeast('turns', turns, 0);
  return Math.PI * turns * (startTorque + endTorque);
}

/**
 * Work that the screw passes on along its axis while the thrust rises from 0, n·l·Q/2 in J.
 * @throws RangeError unless thrust, lead and turns are at least 0
 */
export function thrustWork({
  thrust,
  lead,
  turns,
}: {
  readonly thrust: number; // N, at the end
  readonly lead: number; // m
  readonly turns: number;
}): number {
  assertAtLeast('thrust', thrust, 0, 'N');
  assertAtLeast('lead', lead, 0, 'm');
  assertAtLeast('turns', turns, 0);
  return (turns * lead * thrust) / 2;
}

/**
 * Heat of the thread while the thrust rises from 0 to Q: work of the thread's torque less n·l·Q/2, in J, 0 or more.
 * @throws RangeError as `threadRaisingTorque`, or for turns below 0
 */
export function threadHeat(thread: RubbingThread, thrust: number, turns: number): number {
  const endTorque = threadRaisingTorque(thread, thrust);
  const work = torqueWork({ startTorque: 0, endTorque, turns });
  return work - thrustWork({ thrust, lead: thread.lead, turns });
}

/**
 * Heat of the collar while the thrust rises from 0 to Q, π·n·Q·μc·dc/2 in J, 0 or more.
 * @throws RangeError as `collarTorque`, or for turns below 0
 */
export function collarHeat(collar: Collar, thrust: number, turns: number): number {
  return torqueWork({ startTorque: 0, endTorque: collarTorque(collar, thrust), turns });
}
