/**
 * Geometry of a band round two wheels: lean of the strands, loop length, free strand, wrap.
 * Units: SI only (m, rad). Wheel diameters are where the band runs: bare rim plus tyre.
 * Source: geometry of an open belt, derived here; `shigley` 17-1.
 */
import { assertBelow, assertPositive } from '../assert.ts';

/** Two wheels in either order. */
export interface Wheels {
  readonly wheelDiameter1: number; // m, > 0
  readonly wheelDiameter2: number; // m, > 0
  readonly centreDistance: number; // m, above the mean of the diameters
}

/** Two wheels of one size with a band on them. */
export interface EqualLoop {
  readonly wheelDiameter: number; // m, > 0
  readonly centreDistance: number; // m, above the diameter
  readonly thickness: number; // m, > 0
}

function assertWheels({ wheelDiameter1, wheelDiameter2, centreDistance }: Wheels): void {
  assertPositive('wheelDiameter1', wheelDiameter1, 'm');
  assertPositive('wheelDiameter2', wheelDiameter2, 'm');
  assertPositive('centreDistance', centreDistance, 'm');
  assertBelow('mean wheel diameter', (wheelDiameter1 + wheelDiameter2) / 2, centreDistance, 'm');
}

/**
 * Lean of each strand from the line of the centres, β = asin(|D₁ − D₂|/2C) in rad, 0 or more.
 * @throws RangeError unless all sizes are above 0 m and the wheels do not overlap
 */
export function strandHalfAngle(wheels: Wheels): number {
  assertWheels(wheels);
  const difference = Math.abs(wheels.wheelDiameter1 - wheels.wheelDiameter2);
  return Math.asin(difference / (2 * wheels.centreDistance));
}

/**
 * Length of the band's middle line, L = 2C·cos β + π(D₁ + D₂ + 2t)/2 + β·|D₁ − D₂| in m.
 * @throws RangeError unless all sizes are above 0 m and the wheels do not overlap
 */
export function loopLength({ thickness, ...wheels }: Wheels & { thickness: number }): number {
  const lean = strandHalfAngle(wheels);
  assertPositive('thickness', thickness, 'm');
  const { wheelDiameter1, wheelDiameter2 } = wheels;
  const halfTurns = (Math.PI * (wheelDiameter1 + wheelDiameter2 + 2 * thickness)) / 2;
  const extraWrap = lean * Math.abs(wheelDiameter1 - wheelDiameter2);
  return 2 * freeStrand(wheels) + halfTurns + extraWrap;
}

/**
 * Length of the band's middle line on equal wheels, L = 2C + π(D + t) in m.
 * @throws RangeError unless all sizes are above 0 m and the wheels do not overlap
 */
export function loopLengthEqual({ wheelDiameter, centreDistance, thickness }: EqualLoop): number {
  assertWheels({ wheelDiameter1: wheelDiameter, wheelDiameter2: wheelDiameter, centreDistance });
  assertPositive('thickness', thickness, 'm');
  return 2 * centreDistance + Math.PI * (wheelDiameter + thickness);
}

/** Free strand from wheel to wheel, C·cos β in m. @throws RangeError as `strandHalfAngle` does */
export function freeStrand(wheels: Wheels): number {
  return wheels.centreDistance * Math.cos(strandHalfAngle(wheels));
}

/** Wrap on the smaller wheel, π − 2β in rad. @throws RangeError as `strandHalfAngle` does */
export function smallerWheelWrap(wheels: Wheels): number {
  return Math.PI - 2 * strandHalfAngle(wheels);
}
