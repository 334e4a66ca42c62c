/**
 * What follows from the rig's sizes for who builds it: lengths to cut, the largest pull and the work that it stores, and
 * how tight the grips' bolts must be to hold it.
 * Units: SI.
 * Source: exact screw (core/screw), springs in a row (core/turns); friction of a grip and its reserve: common practice, no source.
 */
import { raisingTorque, screwOnThread } from '../../core/screw.ts';
import { thread } from '../../core/threads.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { BUILD, RIG } from './classroom-rig.ts';

const FACES = 2; // of the strip, each pressed by a plate
const profile = thread(BUILD.gripBolt);

/** Lengths to cut, outside sizes. */
const LENGTHS = {
  stripLength: RIG.betweenGrips + 2 * BUILD.gripLength,
  tubeLength: RIG.betweenGrips + 2 * BUILD.gripLength + BUILD.takeUp,
  frameLength: RIG.betweenGrips + 2 * BUILD.gripLength + BUILD.takeUp + 2 * BUILD.plateThickness,
} as const;

/** How hard a grip's bolts must press together, N, to hold a pull by friction with its reserve. */
const clampingForce = (pull: number): number =>
  (BUILD.gripReserve * pull) / (FACES * BUILD.gripFriction);

/** The torque on each of a grip's bolts for a pull, N·m; nut and head rub as the rig's own washer does. */
function boltTorque(pull: number): number {
  const bolt = screwOnThread(profile, {
    threadFriction: RIG.friction,
    collarFriction: RIG.friction,
    collarDiameter: 1.3 * profile.majorDiameter, // between a nut's bore and its flats
  });
  return raisingTorque(bolt, clampingForce(pull) / BUILD.gripBolts);
}

/** The kinds of what follows. */
export const BUILD_KINDS = {
  stripLength: 'length',
  tubeLength: 'length',
  frameLength: 'length',
  gripLength: 'length',
  gripWidth: 'length',
  gripThickness: 'length',
  tube: 'length',
  tubeWall: 'length',
  tubeGap: 'length',
  takeUp: 'length',
  plateThickness: 'length',
  plateWidth: 'length',
  plateHeight: 'length',
  mostPull: 'force',
  mostStored: 'energy',
  gripTorque: 'torque',
} as const satisfies Record<string, QuantityKind>;

/** What follows, where the screw pulls at most so much, N, on springs of such a stiffness in a row, N/m. */
export function rigToBuild(mostPull: number, stiffness: number) {
  const { gripLength, gripWidth, gripThickness, tube, tubeWall, tubeGap, takeUp } = BUILD;
  const { plateThickness, plateWidth, plateHeight } = BUILD;
  return {
    ...LENGTHS,
    ...{ gripLength, gripWidth, gripThickness, tube, tubeWall, tubeGap, takeUp },
    ...{ plateThickness, plateWidth, plateHeight },
    mostPull,
    mostStored: mostPull ** 2 / (2 * stiffness),
    gripTorque: boltTorque(mostPull),
  };
}
