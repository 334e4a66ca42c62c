/**
 * What the width of a strip adds to its bending round a wheel: the edges of a bent strip curl
 * (anticlastic curvature), and a strip too wide to curl is stiffer.
 * Units: SI only (m); factors have none.
 * Source: derived here, an elastic strip as part of a cylindrical shell with free edges. The limit
 * 1/(1 − ν²) for a very wide strip is that of Shigley, 17-3 (flat metal belts), from memory.
 */
import { assertBetween, assertPositive } from '../assert.ts';

/**
 * Width parameter λ = [3(1 − ν²)]^¼ · b/√(R·t), no unit: under 1 a narrow strip, over 5 a wide one.
 * `bendRadius` is that of the mid-plane, (D + t)/2.
 * @throws RangeError unless the lengths are above 0 m and 0 ≤ ν ≤ 0.5
 */
export function widthParameter({
  width,
  bendRadius,
  thickness,
  poissonsRatio,
}: {
  readonly width: number; // m
  readonly bendRadius: number; // m
  readonly thickness: number; // m
  readonly poissonsRatio: number;
}): number {
  assertPositive('width', width, 'm');
  assertPositive('bendRadius', bendRadius, 'm');
  assertPositive('thickness', thickness, 'm');
  assertBetween('poissonsRatio', poissonsRatio, 0, 0.5);
  return (3 * (1 - poissonsRatio ** 2)) ** 0.25 * (width / Math.sqrt(bendRadius * thickness));
}

/** sinh λ and sin λ, both times 2·e^−λ so that a wide strip does not overflow. */
function scaledSines(parameter: number): { readonly sinh: number; readonly sin: number } {
  return {
    sinh: -Math.expm1(-2 * parameter),
    sin: 2 * Math.exp(-parameter) * Math.sin(parameter),
  };
}

/**
 * Bending stress of the strip over that of a narrow one, mean over the width:
 * (1 − ν²f)/(1 − ν²) with f = (2/λ)(cosh λ − cos λ)/(sinh λ + sin λ); from 1 to 1/(1 − ν²).
 * @throws RangeError unless parameter > 0 and 0 ≤ ν ≤ 0.5
 */
export function meanBendingFactor(parameter: number, poissonsRatio: number): number {
  assertPositive('parameter', parameter);
  assertBetween('poissonsRatio', poissonsRatio, 0, 0.5);
  const { sinh, sin } = scaledSines(parameter);
  // cosh λ − cos λ = 2 sinh²(λ/2) + 2 sin²(λ/2), which keeps its digits in a narrow strip.
  const difference =
    Math.expm1(-parameter) ** 2 + 4 * Math.exp(-parameter) * Math.sin(parameter / 2) ** 2;
  const freeShare = (2 * difference) / (parameter * (sinh + sin));
  return (1 - poissonsRatio ** 2 * freeShare) / (1 - poissonsRatio ** 2);
}

/**
 * Outer-face stress at the edge, where the gullets are, over that of a narrow strip, if nothing
 * presses the lifted edge down: 1 + ν/√(3(1 − ν²)) · (sinh λ − sin λ)/(sinh λ + sin λ); 1 to about
 * 1.18. Tension does press it down: 1.05 ± 0.05 is what a saw band has (derived here, contact
 * solved numerically).
 * @throws RangeError unless parameter > 0 and 0 ≤ ν ≤ 0.5
 */
export function edgeBendingFactor(parameter: number, poissonsRatio: number): number {
  assertPositive('parameter', parameter);
  assertBetween('poissonsRatio', poissonsRatio, 0, 0.5);
  const { sinh, sin } = scaledSines(parameter);
  const lift = poissonsRatio / Math.sqrt(3 * (1 - poissonsRatio ** 2));
  return 1 + (lift * (sinh - sin)) / (sinh + sin);
}
