/** Where sliders, drags and keys may stop: on the steps of the present unit system, inside the input's range. */
import { clamped, type InputSpec } from '../models/define-model.ts';
import type { UnitSystem } from '../units/kinds.ts';

/** A whole number of steps, without the last digits' noise of binary fractions. */
const onGrid = (steps: number, step: number) => Number((steps * step).toPrecision(12));

/** The nearest step to a value, within the range. */
export function snapped(spec: InputSpec, system: UnitSystem, value: number): number {
  const step = spec.step[system];
  return clamped(spec, onGrid(Math.round(value / step), step));
}

/** So many steps on from a value; infinitely many go to the end of the range. */
export function stepped(spec: InputSpec, system: UnitSystem, value: number, steps: number): number {
  const step = spec.step[system];
  const target = Number.isFinite(steps) ? onGrid(Math.round(value / step) + steps, step) : steps;
  return clamped(spec, target);
}
