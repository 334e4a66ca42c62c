/**
 * The inputs of the measured stress: what the stretch at the top torque is, and all that makes it doubtful.
 * Units: SI only (Pa, m, N·m).
 * Source: drag carried into the stretch by the slope of the readings, derived here.
 */
import { bandSteel } from '../../assumptions.ts';
import type { InputByDeviation, InputByUncertainty } from '../../statistics/uncertain-input.ts';
import type { Worksheet } from '../inputs.ts';
import type { Outcome, Waiting } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { worksheetDrag } from '../torque-at-hand.ts';
import type { StressScale } from './stress.ts';
import type { StretchResult, ZeroResult } from './zero.ts';

/** The inputs of the stress at the top torque: the scale, the stretch, and the error that the drag adds to it. */
export interface StressInputs extends StressScale {
  readonly stretch: InputByDeviation; // m
  readonly drag: InputByUncertainty; // m
}

/** A stretch at the top torque, from zero. */
export type KnownStretch = Pick<
  StretchResult,
  'stretch' | 'standardUncertainty' | 'degreesOfFreedom' | 'topTorque'
>;

/**
 * Those inputs; refused where the zero is too vague to carry a stress (`zeroTooVague`) or the strain
 * is more than steel springs back from (`tooMuchStretch`).
 */
export function worksheetStressInputs(
  worksheet: Worksheet,
  zeroOutcome: Outcome<ZeroResult>,
  scaleOutcome: Outcome<StressScale>,
): Outcome<StressInputs> {
  const needs = { zero: zeroOutcome, scale: scaleOutcome, drag: worksheetDrag(worksheet) };
  return whenReady(needs, ({ zero, scale, drag: { uncertainty } }) => {
    const refusal = refuseStress(zero, zero.stretch.stretch / scale.gaugeLength.value);
    return refusal ?? ready(stressInputs(scale, zero.stretch, zero.dragTorque, uncertainty));
  });
}

/** The inputs of the stress for a stretch; the drag, N·m, is unsure by its standard uncertainty. */
export function stressInputs(
  scale: StressScale,
  { stretch, standardUncertainty, degreesOfFreedom, topTorque }: KnownStretch,
  dragTorque: number,
  uncertainty: number,
): StressInputs {
  return {
    ...scale,
    stretch: { value: stretch, standardDeviation: standardUncertainty, degreesOfFreedom },
    drag: { value: 0, standardUncertainty: (stretch * uncertainty) / (topTorque - dragTorque) },
  };
}

function refuseStress(zero: ZeroResult, strain: number): Waiting | undefined {
  if (zero.warnings.includes('tooWideForStress'))
    return refused('zeroTooVague', { low: zero.low, high: zero.high }, ['readings']);
  if (strain > bandSteel.mostStrain)
    return refused('tooMuchStretch', { strain }, ['readings', 'rig.gaugeLength']);
  return undefined;
}
