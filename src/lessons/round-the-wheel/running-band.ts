/**
 * The band of the mill at Ottersleigh while it runs and cuts, on wheels, at a thickness and a tension that the reader
 * sets: the stresses of its strands, on its wheels, and how often they come.
 * Units: SI.
 * Source: core/wheel; the mill is invented; rim friction is the middle of `rimFriction`, common practice, no source.
 */
import { bandSteel, edgeFactor, rimFriction } from '../../core/assumptions.ts';
import { bandStiffness, loopLengthEqual } from '../../core/loop.ts';
import { sectionArea } from '../../core/section.ts';
import { massPerLength } from '../../core/span.ts';
import {
  bendingStress,
  bendsPerHour,
  centrifugalShare,
  maxPower,
  peakStress,
  runningStrandForce,
  strandsUnderPower,
  stressRange,
} from '../../core/wheel.ts';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';

/** What the reader sets of the mill. */
export interface Setting {
  readonly wheelDiameter: number; // m, of both wheels
  readonly thickness: number; // m
  readonly tension: number; // Pa, at rest
  readonly speed: number; // m/s
  readonly power: number; // W, into the cut
}

const FRICTION = (rimFriction.low + rimFriction.high) / 2;
const { youngsModulus } = bandSteel;

/** What turns a setting into forces: section, loop, mass, and the share of the centrifugal force in the strands. */
function bandOf({ wheelDiameter, thickness, speed }: Setting) {
  const sizes = { ...OTTERSLEIGH, thickness, wheelDiameter };
  const area = sectionArea({ width: sizes.bodyWidth, thickness });
  const loopLength = loopLengthEqual(sizes);
  const share = centrifugalShare({
    bandStiffness: bandStiffness({ youngsModulus, area }, loopLength),
    supportStiffness: OTTERSLEIGH.frameStiffness,
  });
  return { area, loopLength, share, moving: { massPerLength: massPerLength(sizes), speed } };
}

/** The power that reaches the cut: as much as is asked for, or as the driving wheel can hold; none at rest. */
function cutPower(mean: number, { power, speed }: Setting, moving: { massPerLength: number }) {
  if (speed === 0) return 0;
  const grip = { friction: FRICTION, wrap: Math.PI };
  return Math.min(power, maxPower(mean, { ...moving, speed }, grip));
}

/** Strands, bend, peak and swing of a setting, and how often a place on the band is bent. */
export function runningBand(setting: Setting) {
  const { area, loopLength, share, moving } = bandOf(setting);
  const { tension, speed, power } = setting;
  const meanForce = runningStrandForce(tension * area, share, moving);
  const used = cutPower(meanForce, setting, moving);
  const { tight, slack } =
    speed === 0
      ? { tight: meanForce, slack: meanForce }
      : strandsUnderPower({ meanForce, power: used, speed });
  const bending = bendingStress({ ...setting, youngsModulus });
  const load = { tight, area, bendingStress: bending, edgeFactor };
  return {
    loopLength,
    share,
    bending,
    edgeBend: edgeFactor * bending,
    runAdds: meanForce / area - tension,
    tightStress: tight / area,
    slackStress: slack / area,
    peak: peakStress(load),
    range: stressRange(load, slack),
    bends: bendsPerHour({ speed, loopLength }),
    isSlipping: speed > 0 && used < power,
  };
}

/** The stresses of a running band. */
export type RunningBand = ReturnType<typeof runningBand>;
