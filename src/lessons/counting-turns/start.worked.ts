/**
 * What the lesson `counting-turns` tells whatever the reader sets: a spring lent from one mill to another, and a band
 * that is not yet rolled round.
 * Units: SI.
 * Source: the modules beside it and core/band-stiffness, by their own sources.
 */
import { rimFriction } from '../../core/assumptions.ts';
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

/** How much stiffer the first mill's band is before it is rolled round, and if nothing slips. */
function excesses() {
  const mill = MILLS.stiffFrame;
  const steel = { ...STEEL, area: millArea(mill) };
  const { wheelDiameter, centreDistance } = mill;
  const wheels = { wheelDiameter1: wheelDiameter, wheelDiameter2: wheelDiameter, centreDistance };
  const rolled = bandStiffness(steel, loopLengthEqual(mill));
  return {
    rimFrictionLow: rimFriction.low,
    rimFrictionHigh: rimFriction.high,
    slipperyExcess: bandStiffnessBeforeRolling(steel, wheels, rimFriction.low) / rolled - 1,
    gripExcess: bandStiffnessBeforeRolling(steel, wheels, rimFriction.high) / rolled - 1,
    lockedExcess: bandStiffnessLocked(steel, centreDistance) / rolled - 1,
  };
}

/** That job, by the names of the model's outputs. */
export const borrowed = borrowedSpring();

/** Those excesses, by the names of the model's outputs. */
export const catches = excesses();
