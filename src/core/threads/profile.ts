/**
 * Basic profile of a standard screw: pitch diameter, root, stress area, flank angle.
 * Units: SI only (m, m², rad).
 * Source: `thread-standards-metric` (ISO 724, ISO 898-1), `thread-standards-inch` (ASME B1.1,
 * B1.5), `iso-2901` (trapezoidal).
 */
import type { ThreadForm, ThreadSize } from './form.ts';
import { pitchDiameter, sharpHeight, threadHalfAngle } from './form.ts';

/** The standard families; each has its own rule for root and stress area. */
export type ThreadFamily = 'metric' | 'trapezoidal' | 'unified' | 'acme';

/** Basic profile of the screw; `stressArea` only where the standard gives one. */
export interface Thread extends ThreadSize {
  readonly majorDiameter: number; // m
  readonly pitch: number; // m; the lead is starts × pitch
  readonly pitchDiameter: number; // m
  readonly minorDiameter: number; // m, root of the screw; basic minor for Acme and Unified
  readonly stressArea?: number; // m²
  readonly halfAngle: number; // rad
}

interface FamilyRule {
  readonly form: ThreadForm;
  readonly rootDepth: (pitch: number) => number; // m, majorDiameter − minorDiameter
  readonly stressDepth?: (pitch: number) => number; // m, majorDiameter − that of the stress area
}

/**
 * Clearance a_c between a trapezoidal screw's root and its nut's crest, m.
 */
function trapezoidalClearance(pitch: number): number {
  if (pitch < 0.002) return 0.15e-3;
  if (pitch < 0.006) return 0.25e-3;
  return pitch < 0.014 ? 0.5e-3 : 1e-3;
}

const rules: Readonly<Record<ThreadFamily, FamilyRule>> = {
  metric: {
    form: 'v60',
    rootDepth: (pitch) => (17 / 12) * sharpHeight(pitch),
    stressDepth: (pitch) => (13 / 12) * sharpHeight(pitch), // diameter (d₂ + d₃)/2
  },
  unified: {
    form: 'v60',
    rootDepth: (pitch) => (5 / 4) * sharpHeight(pitch),
    stressDepth: (pitch) => 0.9743 * pitch, // the standard's own rounded figure
  },
  acme: { form: 'acme', rootDepth: (pitch) => pitch },
  trapezoidal: {
    form: 'trapezoidal',
    rootDepth: (pitch) => pitch + 2 * trapezoidalClearance(pitch),
  },
};

/** Profile of a size in a family. @throws RangeError unless 0 < pitch < majorDiameter/2 */
export function threadProfile(family: ThreadFamily, size: ThreadSize): Thread {
  const { form, rootDepth, stressDepth } = rules[family];
  const { majorDiameter, pitch } = size;
  const profile = {
    majorDiameter,
    pitch,
    pitchDiameter: pitchDiameter(form, size),
    minorDiameter: majorDiameter - rootDepth(pitch),
    halfAngle: threadHalfAngle[form],
  };
  if (stressDepth === undefined) return profile;
  return { ...profile, stressArea: (Math.PI / 4) * (majorDiameter - stressDepth(pitch)) ** 2 };
}
