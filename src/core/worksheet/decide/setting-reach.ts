/**
 * What a setting reaches: the stress with its interval, and the torques that the target may need.
 * Units: SI only (N·m, Pa).
 * Source: JCGM 100:2008 (GUM) 5.1.2, to first order, from memory.
 */

/** A stress to be set, how well the torque set for it reaches it, and the same as torques. */
export interface SettingReach {
  readonly stress: number; // Pa, the target
  readonly standardUncertainty: number; // Pa, of the stress reached
  readonly expandedUncertainty: number; // Pa, 95 %
  readonly low: number; // Pa
  readonly high: number; // Pa
  readonly torqueLow: number; // N·m, that the target may need at least: never below the drag
  readonly torqueHigh: number; // N·m, at most
}

/** A torque above the drag for a stress; the one is in proportion to the other. */
export interface SetTorque {
  readonly torque: number; // N·m
  readonly dragTorque: number; // N·m
  readonly stress: number; // Pa
}

/** Stress ± U, and the torque ± U·(M − M_d)/σ: what is not known of the stress, as the wrench sees it. */
export function settingReach(
  { torque, dragTorque, stress }: SetTorque,
  standardUncertainty: number,
  coverageFactor: number,
): SettingReach {
  const expandedUncertainty = coverageFactor * standardUncertainty;
  const torqueReach = ((torque - dragTorque) * expandedUncertainty) / stress;
  return {
    stress,
    standardUncertainty,
    expandedUncertainty,
    low: stress - expandedUncertainty,
    high: stress + expandedUncertainty,
    torqueLow: Math.max(dragTorque, torque - torqueReach),
    torqueHigh: torque + torqueReach,
  };
}
