/**
 * The side force that presses the middle of a span, with the stretch that the press itself adds.
 * Units: SI only (m, N, N/m, N·m²).
 * Source: string and beam see `beam-under-tension.ts`; the stretch derived here.
 */
import { assertAtLeast, assertPositive, refuse } from '../assert.ts';
import { lateralStiffness, type SpanEnds, type TensionedSpan } from './beam-under-tension.ts';

/**
 * A span pressed at its middle. With both `axialStiffness` E·A and `effectiveLength` the stretch of
 * the press counts too; with neither the tension is taken as constant.
 */
export interface PressedSpan {
  readonly span: number; // m
  readonly bendingStiffness: number; // N·m²
  readonly ends: SpanEnds;
  readonly axialStiffness?: number | undefined; // N
  readonly effectiveLength?: number | undefined; // m
}

/**
 * Length that takes part in the stretch, L_eff = L + 4EA/k_f in m: a frame that yields acts like
 * more band. For a band that cannot roll over its wheels take the strand itself instead.
 * @throws RangeError unless all are above 0; an infinite frameStiffness is a rigid frame
 */
export function effectiveLength({
  loopLength,
  axialStiffness,
  frameStiffness,
}: {
  readonly loopLength: number; // m
  readonly axialStiffness: number; // N
  readonly frameStiffness: number; // N/m
}): number {
  assertPositive('loopLength', loopLength, 'm');
  assertPositive('axialStiffness', axialStiffness, 'N');
  if (!(frameStiffness > 0)) refuse('frameStiffness', 'above 0', 'N/m', frameStiffness);
  return loopLength + (4 * axialStiffness) / frameStiffness;
}

/**
 * Factor of the cube of the deflection in the force of a press, 8EA/(s²·L_eff) in N/m³; 0 where the
 * stretch is left out.
 * @throws RangeError unless axialStiffness and effectiveLength come together and are above 0
 */
export function stretchStiffness({ axialStiffness, effectiveLength, span }: PressedSpan): number {
  if (axialStiffness === undefined && effectiveLength === undefined) return 0;
  const [stiffness, length] = [axialStiffness ?? Number.NaN, effectiveLength ?? Number.NaN];
  assertPositive('axialStiffness', stiffness, 'N');
  assertPositive('effectiveLength', length, 'm');
  return (8 * stiffness) / (span ** 2 * length);
}

/**
 * Side force F = K(T)·d + 8EA·d³/(s²·L_eff) in N that presses the middle of the span by
 * `deflection`.
 * @throws RangeError unless tension > 0 N and deflection ≥ 0 m
 */
export function pressForce(pressed: PressedSpan & TensionedSpan, deflection: number): number {
  assertAtLeast('deflection', deflection, 0, 'm');
  const direct = lateralStiffness(pressed, pressed.ends) * deflection;
  return direct + stretchStiffness(pressed) * deflection ** 3;
}
