/**
 * What the lesson `counting-turns` tells whatever the reader sets: a spring lent from one mill to another, and a band
 * that is not yet rolled round.
 * Units: SI.
 * Source: the modules beside it and core/band-stiffness, by their own sources.
 */
import {
  bandStiffness,
  bandStiffnessBeforeRolling,
  bandStiffnessLocked,
  loopLengthEqual,
} from '../../core/loop.ts';
import { type CountingMill, STEEL } from './mill.ts';
import { MILLS } from './mills.worked.ts';
import { job } from './nut-job.ts';
import { millArea } from './nut-travel.ts';

/** The job of the first mill with the coil spring of the third between its nut and its frame. */
function borrowedSpring() {
  const mill: CountingMill = { ...MILLS.stiffFrame, spring: MILLS.softSpring.spring };
  const { jobTurns, clickShare } = job(mill);
  return { borrowedTurns: jobTurns, borrowedShare: clickShare };
}

/** Friction of a band on its rims, steel or tyre: common practice, no source. */
const RIM_FRICTION = { low: 0.2, high: 0.3 } as const;

/** How much stiffer the first mill's band is before it is rolled round, and if nothing slips. */
function excesses() {
  const mill = MILLS.stiffFrame;
  const steel = { ...STEEL, area: millArea(mill) };
  const { wheelDiameter, centreDistance } = mill;
  const wheels = { wheelDiameter1: wheelDiameter, wheelDiameter2: wheelDiameter, centreDistance };
  const rolled = bandStiffness(steel, loopLengthEqual(mill));
  return {
    rimFrictionLow: RIM_FRICTION.low,
    rimFrictionHigh: RIM_FRICTION.high,
    slipperyExcess: bandStiffnessBeforeRolling(steel, wheels, RIM_FRICTION.low) / rolled - 1,
    gripExcess: bandStiffnessBeforeRolling(steel, wheels, RIM_FRICTION.high) / rolled - 1,
    lockedExcess: bandStiffnessLocked(steel, centreDistance) / rolled - 1,
  };
}

/** That job, by the names of the model's outputs. */
export const borrowed = borrowedSpring();

/** Those excesses, by the names of the model's outputs. */
export const catches = excesses();
