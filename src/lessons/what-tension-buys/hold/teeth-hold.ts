/**
 * How firmly a span holds its teeth against a push: the push over how far it moves them. It falls to nothing as the
 * guides move apart.
 * Units: SI (N/m).
 * Source: core/span.
 */
import { PUSH, pushedSpan } from '../push/pushed-span.ts';

/** The guide spacings that can be tried, m: from close guides to ones that no mill has. */
export const SPACINGS = { least: 0.25, most: 10 } as const;

/** The push over the movement of the teeth. */
export const teethHold = (stress: number, spacing: number): number =>
  PUSH / pushedSpan(stress, spacing).teeth;
