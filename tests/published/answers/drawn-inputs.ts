/** Inputs as the supplement writes them: two ends, or a value and a standard uncertainty. */
import type { UncertainInput } from '../../../src/core/statistics/uncertain-input.ts';
import { numbersAt, type PublishedCase } from '../cases.ts';

/** Equal chances between two ends. */
export function boundsAt({ inputs }: PublishedCase, path: string): UncertainInput {
  const [low, high] = numbersAt(inputs, path) as [number, number];
  return { value: (low + high) / 2, halfWidth: (high - low) / 2, shape: 'rectangular' };
}

/** A normal distribution. */
export function normalAt({ inputs }: PublishedCase, path: string): UncertainInput {
  const [value, standardUncertainty] = numbersAt(inputs, path) as [number, number];
  return { value, standardUncertainty };
}
