/**
 * From the handle to the band on one invented mill: what turns of the handle, counted from no tension, do to screw,
 * wheel, frame, strand and steel, and where the work of those turns goes.
 * Units: SI.
 * Source: springs in a row (core/turns), exact screw (core/screw), work of the turns (core/turn-work), strain energy
 * (core/energy), all by their own sources; the mill is invented, its thread friction a guess from handbook ranges,
 * from memory.
 */

import { elongation } from '../../core/elasticity.ts';
import {
  bandStiffness,
  coilEnergy,
  coilRadius,
  loopLengthEqual,
  stretchEnergy,
  supportEnergy,
} from '../../core/loop.ts';
import {
  collarHeat,
  efficiency,
  type Screw,
  stressFromTorque,
  threadHeat,
  torqueForWheelForce,
  torqueWork,
  wheelForceFromTorque,
} from '../../core/screw.ts';
import { strandForceAtWheel, strandStress } from '../../core/section.ts';
import { seriesStiffness } from '../../core/turns.ts';
import { defineModel } from '../../models/define-model.ts';
import { handbookFriction, THREAD_FRICTION } from '../../models/handbook-friction.ts';
import { bandArea, OTTERSLEIGH, screwWith } from '../../models/mills/ottersleigh.ts';
import { OUTPUTS } from './outputs.ts';

/** The torque at which the wrench of this mill clicks, N·m. */
const CLICK_TORQUE = 15;

const { youngsModulus, bodyWidth, thickness, widthOverTeeth, gaugeLength, dragTorque } =
  OTTERSLEIGH;
const { lead } = screwWith(OTTERSLEIGH.threadFriction.middle);
const area = bandArea;
const loopLength = loopLengthEqual(OTTERSLEIGH);
const bandGive = bandStiffness({ youngsModulus, area }, loopLength);
const coil = coilEnergy({
  youngsModulus,
  thickness,
  radius: coilRadius(loopLength, OTTERSLEIGH.coilRings),
  area: widthOverTeeth * thickness,
  loopLength,
});

/** Where the work of the turns goes, each part from its own formula; the screw pulls in line, so thrust is wheel force. */
function workParts(screw: Screw, pull: number, turns: number, frameStiffness: number) {
  const stress = strandStress(strandForceAtWheel(pull), area);
  return {
    bandWork: stretchEnergy({ stress, youngsModulus, area, loopLength }),
    frameWork: supportEnergy(pull, frameStiffness),
    threadWork: threadHeat(screw, pull, turns),
    collarWork: collarHeat(screw, pull, turns),
    dragWork: torqueWork({ startTorque: dragTorque, endTorque: dragTorque, turns }),
  };
}

/** Which parts of the heat the rubbing of the thread and the drag are. */
function heatParts({ threadWork, collarWork, dragWork }: ReturnType<typeof workParts>) {
  const heat = threadWork + collarWork + dragWork;
  return {
    heat,
    // Before any turn the parts are their limits: all heat comes of the drag.
    threadPart: heat > 0 ? threadWork / heat : 0,
    dragPart: heat > 0 ? dragWork / heat : 1,
  };
}

/** Stress that the wrench's one setting brings when the thread rubs so much; the frame has no say in it. */
function clickStress(threadFriction: number): number {
  const screw = screwWith(threadFriction);
  const tensioner = { lead: screw.lead, efficiency: efficiency(screw), dragTorque };
  return stressFromTorque(tensioner, { area }, CLICK_TORQUE);
}

/** The share of the click's stress that is lost when a thread at the low end of oiled runs dry. */
const dryLoss = 1 - clickStress(THREAD_FRICTION.dry.high) / clickStress(THREAD_FRICTION.oiled.low);

/** What usual slips would make of the same numbers. */
function slips(torque: number, screw: Screw, turns: number) {
  const tensioner = { lead: screw.lead, efficiency: efficiency(screw), dragTorque };
  return {
    smoothThrust: wheelForceFromTorque({ ...tensioner, efficiency: 1 }, torque),
    thrustWithDrag: wheelForceFromTorque({ ...tensioner, dragTorque: 0 }, torque),
    workAtEndTorque: torqueWork({ startTorque: torque, endTorque: torque, turns }),
  };
}

/** Turns of the handle to the stress in the steel, stage by stage, and to the parts of the work. */
export const handleToBand = defineModel({
  name: 'handle-to-band',
  inputs: {
    turns: { kind: 'turns', default: 0.5, min: 0, max: 0.75, step: { metric: 0.01, us: 0.01 } },
    friction: {
      kind: 'ratio',
      default: 0.14,
      min: 0.08,
      max: 0.25,
      step: { metric: 0.01, us: 0.01 },
    },
    frameStiffness: {
      kind: 'stiffness',
      default: OTTERSLEIGH.frameStiffness,
      min: 2e6,
      max: 30e6,
      step: { metric: 0.5e6, us: 17_512.68 },
    },
  },
  outputs: OUTPUTS,
  constants: {
    clickTorque: CLICK_TORQUE,
    dryLoss,
    ...handbookFriction,
    coilEnergy: coil,
    dragTorque,
    lead,
    area,
    bodyWidth,
    thickness,
    gaugeLength,
    youngsModulus,
    bandStiffness: bandGive,
  },
  evaluate: ({ turns, friction, frameStiffness }) => {
    const screw = screwWith(friction);
    const screwTravel = turns * screw.lead;
    const pull = screwTravel * seriesStiffness([bandGive, frameStiffness]);
    const tensioner = { lead: screw.lead, efficiency: efficiency(screw), dragTorque };
    const torque = torqueForWheelForce(tensioner, pull);
    const strandForce = strandForceAtWheel(pull);
    const stress = strandStress(strandForce, area);
    const work = torqueWork({ startTorque: dragTorque, endTorque: torque, turns });
    const parts = workParts(screw, pull, turns, frameStiffness);
    const heatOf = heatParts(parts);
    return {
      torque,
      thrust: pull,
      wheelForce: pull,
      strandForce,
      stress,
      stretch: elongation({ stress, youngsModulus, gaugeLength }),
      screwTravel,
      wheelTravel: pull / bandGive,
      frameTravel: pull / frameStiffness,
      work,
      ...parts,
      // Before any turn the shares are their limits: the drag takes all.
      bandShare: work > 0 ? parts.bandWork / work : 0,
      heatShare: work > 0 ? heatOf.heat / work : 1,
      ...heatOf,
      clickStress: clickStress(friction),
      efficiency: tensioner.efficiency,
      ...slips(torque, screw, turns),
    };
  },
});
