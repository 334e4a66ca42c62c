/**
 * How well a stress is known that the straight line of the worksheet's readings gives at a torque.
 * Units: none (shares of the stress).
 * Source: JCGM 100:2008 (GUM) 5.1.6, from memory; the wrench's own, assumptions.ts.
 */

import type { MeasuredResult } from './measure/measured.ts';

/**
 * Relative standard uncertainty √((u(σ)/σ)² + (u(M_d)/(M − M_d))² + w²) of the stress reached at a
 * torque M above the drag, N·m; w is how well a wrench or gauge repeats; its own scale cancels, as the same one sets and measured.
 */
export function relativeDoubt(measured: MeasuredResult, torque: number): number {
  return Math.hypot(
    measured.standardUncertainty / measured.stress,
    measured.dragTorqueUncertainty / (torque - measured.dragTorque),
    measured.loadReading.share,
  );
}
