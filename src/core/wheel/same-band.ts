/**
 * The setting for another stress on the same band and mill, from one measured point.
 * Units: SI only (N·m of torque, or Pa of oil pressure; Pa of stress).
 * Source: proportion above the load at which stretching begins, derived here.
 */
import { assertAtLeast, assertBelow, assertFinite, assertPositive } from '../assert.ts';

/** One load whose stress was measured; loads in N·m of torque, or in Pa of oil pressure. */
export interface KnownSetting {
  readonly dragLoad: number; // the load at which stretching begins, 0 or more
  readonly topLoad: number; // above dragLoad
  readonly topStress: number; // Pa, > 0, measured at topLoad
}

/**
 * Setting for a target stress on the same band and mill, M′ = M_d + (M_top − M_d)·σ′/σ_top, in the
 * unit of the loads: section, modulus and efficiency cancel.
 * @throws RangeError unless topLoad is above dragLoad ≥ 0, topStress > 0 Pa and targetStress ≥ 0 Pa
 */
export function settingForStress(known: KnownSetting, targetStress: number): number {
  assertAtLeast('dragLoad', known.dragLoad, 0);
  assertFinite('topLoad', known.topLoad);
  assertBelow('dragLoad', known.dragLoad, known.topLoad);
  assertPositive('topStress', known.topStress, 'Pa');
  assertAtLeast('targetStress', targetStress, 0, 'Pa');
  return known.dragLoad + ((known.topLoad - known.dragLoad) * targetStress) / known.topStress;
}
