/** Keys move sliders and handles along the steps of the present unit system, inside the input's range. */
import { clamped, type QuantityInput, snapped } from '../../models/define-model.ts';
import type { UnitSystem } from '../../units/kinds.ts';

/** So many steps on from a value; infinitely many go to the end of the range. */
export function stepped(
  spec: QuantityInput,
  system: UnitSystem,
  value: number,
  steps: number,
): number {
  if (!Number.isFinite(steps)) return clamped(spec, steps);
  const here = snapped(spec, system, value);
  return snapped(spec, system, here + steps * spec.step[system]);
}
