/** Where sliders, drags and keys may stop: on the steps of the present unit system, inside the input's range. */
import { clamped, type InputSpec } from '../models/define-model.ts';
import type { UnitSystem } from '../units/kinds.ts';

/** The nearest step to a value, within the range. */
export function snapped(spec: InputSpec, system: UnitSystem, value: number): number {
  const step = spec.step[system];
  return clamped(spec, Math.round(value / step) * step);
}

/** So many steps on from a value; infinitely many go to the end of the range. */
export function stepped(spec: InputSpec, system: UnitSystem, value: number, steps: number): number {
  const step = spec.step[system];
  return clamped(spec, Number.isFinite(steps) ? (Math.round(value / step) + steps) * step : steps);
}
