/**
 * What the band of the lesson is before anyone tightens it, worked out at build: the page need not carry the screw.
 * Units: SI.
 * Source: core/zero for the shift; the mill and its curl are invented.
 */
import { benchStress } from '../../../core/bench.ts';
import { coilShift } from '../../../core/zero.ts';
import { millOfSeed } from '../mill.ts';
import { TORQUES } from '../taking.ts';

const HEIGHT = 0.014; // m, of the dial's line over the band's middle
const COIL_RADIUS = 25; // m, of the curve left in the slack band
const DYING_STRESS = 8e6; // Pa, over which the curve dies by a factor e: the slow end of the bench

const mill = millOfSeed(0);
const { dragTorque, youngsModulus } = mill.hidden;
const { gaugeLength } = mill.known;
const topTorque = TORQUES.at(-1) ?? 0;

/** The band, its gauge and its screw. */
export const atRest = {
  drag: dragTorque,
  topTorque,
  stressPerTorque: benchStress(mill, topTorque) / (topTorque - dragTorque),
  youngsModulus,
  gaugeLength,
  height: HEIGHT,
  coilRadius: COIL_RADIUS,
  shift: coilShift({ gaugeLength, coilRadius: COIL_RADIUS }, HEIGHT),
  dyingStress: DYING_STRESS,
};
