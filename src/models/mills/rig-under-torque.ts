/**
 * The classroom rig under a torque: what the screw pulls, what the steel feels, what the dial should read. Its screw
 * pulls one strip, so nothing is halved.
 * Units: SI.
 * Source: exact screw (core/screw), Hooke's law (core/elasticity), springs in a row (core/turns); friction may be off by
 * the site's usual half-width (core/assumptions); the rig is invented.
 */
import { threadFrictionHalfWidth } from '../../core/assumptions.ts';
import { elongation, stress } from '../../core/elasticity.ts';
import {
  efficiency,
  screwOnThread,
  thrustFromTorque,
  wornCollarDiameter,
} from '../../core/screw.ts';
import { sectionArea } from '../../core/section.ts';
import { thread } from '../../core/threads.ts';
import { seriesStiffness, turnsForForce } from '../../core/turns.ts';
import { defineModel } from '../define-model.ts';
import { RIG } from './classroom-rig.ts';
import { BUILD_KINDS, rigToBuild } from './rig-to-build.ts';

const { youngsModulus, gaugeLength, graduation, dragTorque, friction } = RIG;
const profile = thread(RIG.thread);
const collarDiameter = wornCollarDiameter(RIG.washer);
const area = sectionArea(RIG);
const stripStiffness = (youngsModulus * area) / RIG.betweenGrips;
const stiffness = seriesStiffness([stripStiffness, RIG.frameStiffness]);

const screwWith = (rubbing: number) =>
  screwOnThread(profile, { threadFriction: rubbing, collarFriction: rubbing, collarDiameter });

const screw = screwWith(friction);

/** The pull in N for a torque in N·m, when thread and washer rub so much. */
const pullAt = (torque: number, rubbing: number): number =>
  thrustFromTorque(screwWith(rubbing), Math.max(0, torque - dragTorque));

const dialAt = (stressInSteel: number): number =>
  elongation({ stress: stressInSteel, youngsModulus, gaugeLength });

/** Torque on the rig's screw to pull, stress, stretch and turns. */
export const classroomRig = defineModel({
  name: 'classroom-rig',
  inputs: {
    torque: { kind: 'torque', default: 4, min: 0, max: 8, step: { metric: 0.1, us: 0.13558 } },
  },
  outputs: {
    pull: 'force',
    stress: 'stress',
    stressLow: 'stress',
    stressHigh: 'stress',
    stretch: 'stretch',
    stretchLow: 'stretch',
    stretchHigh: 'stretch',
    turns: 'turns',
    efficiency: 'percent',
    area: 'area',
    width: 'length',
    thickness: 'thickness',
    betweenGrips: 'length',
    gaugeLength: 'length',
    graduation: 'thickness',
    markStress: 'stress',
    dragTorque: 'torque',
    lead: 'length',
    frameStiffness: 'stiffness',
    friction: 'ratio',
    frictionLow: 'ratio',
    frictionHigh: 'ratio',
    youngsModulus: 'modulus',
    ...BUILD_KINDS,
  },
  constants: {
    area,
    width: RIG.width,
    thickness: RIG.thickness,
    betweenGrips: RIG.betweenGrips,
    gaugeLength,
    graduation,
    markStress: stress({ elongation: graduation, gaugeLength }, youngsModulus),
    dragTorque,
    lead: screw.lead,
    efficiency: efficiency(screw),
    frameStiffness: RIG.frameStiffness,
    friction,
    frictionLow: friction - threadFrictionHalfWidth,
    frictionHigh: friction + threadFrictionHalfWidth,
    youngsModulus,
    ...rigToBuild(pullAt(RIG.mostTorque, friction - threadFrictionHalfWidth), stiffness),
  },
  evaluate: ({ torque }) => {
    const pull = pullAt(torque, friction);
    const low = pullAt(torque, friction + threadFrictionHalfWidth) / area;
    const high = pullAt(torque, friction - threadFrictionHalfWidth) / area;
    return {
      pull,
      stress: pull / area,
      stressLow: low,
      stressHigh: high,
      stretch: dialAt(pull / area),
      stretchLow: dialAt(low),
      stretchHigh: dialAt(high),
      turns: turnsForForce({ lead: screw.lead, wheelForce: pull, stiffness }),
    };
  },
});
