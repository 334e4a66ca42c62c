/**
 * The drive wheel at Ottersleigh while the mill cuts: what its two strands pull, and the power at which it would slip.
 * Units: SI.
 * Source: core/running; the mill is invented. Half of the rim is wrapped, for its wheels are alike.
 */
import { bandStiffness, loopLengthEqual } from '../../../core/loop.ts';
import { massPerLength } from '../../../core/span.ts';
import {
  centrifugalForce,
  centrifugalShare,
  maxPower,
  runningStrandForce,
  slipMargin,
  strandsUnderPower,
} from '../../../core/wheel.ts';
import { bandArea, OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';

const { speed, youngsModulus, frameStiffness } = OTTERSLEIGH;

/** The running band. */
export const BAND = { massPerLength: massPerLength(OTTERSLEIGH), speed };

/** Wrap of either wheel, rad. */
export const WRAP = Math.PI;

/** Share of the centrifugal force that reaches the strands. */
export const SHARE = centrifugalShare({
  bandStiffness: bandStiffness({ youngsModulus, area: bandArea }, loopLengthEqual(OTTERSLEIGH)),
  supportStiffness: frameStiffness,
});

const meanForceAt = (stress: number): number => runningStrandForce(stress * bandArea, SHARE, BAND);

/** Both strands in N while so much power goes into the cut; the slack one must keep some pull. */
export const strandsAt = (stress: number, power: number) =>
  strandsUnderPower({ meanForce: meanForceAt(stress), power, speed });

/** Power in W at which the band slips. */
export const slipPowerAt = (stress: number, friction: number): number =>
  maxPower(meanForceAt(stress), BAND, { friction, wrap: WRAP });

/** How far from slipping, no unit: it slips below 1. */
export const marginAt = (stress: number, power: number, friction: number): number =>
  slipMargin(strandsAt(stress, power), BAND, { friction, wrap: WRAP });

/** What speed and cut add to the stress at rest, Pa. */
export const runningRise = (power: number): number =>
  (SHARE * centrifugalForce(BAND) + power / (2 * speed)) / bandArea;
