/**
 * The one verdict on the worksheet's measurement: good, rough, none, or waiting for more.
 * Units: none.
 * Source: derived here, tested by simulation; the limits, assumptions.ts.
 */

import { worksheetBudget } from '../budget.ts';
import type { Outcome, RefusalCode } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { highStart, roughUncertainty, roughWidening } from '../own-assumptions.ts';
import { stressOfStretch } from './stress.ts';
import type { StressInputs } from './stress-inputs.ts';
import type { StretchResult, ZeroResult } from './zero.ts';

/** What makes a measurement rough. */
export type RoughReason = 'neverStraight' | 'wideInterval' | 'wideStress' | 'startsHigh';

/** Good: trust it. Rough: its interval is wide. None: the readings give no stress. Waiting: too little is filled in. */
export interface Verdict {
  readonly grade: 'good' | 'rough' | 'none' | 'waiting';
  readonly reasons: readonly (RoughReason | RefusalCode)[];
}

/** What readings that are all there can be refused for. */
const noStress: readonly RefusalCode[] = ['readingFalls', 'zeroTooVague', 'tooMuchStretch'];

/** The verdict, from the inputs of the stress before they are widened. */
export function worksheetVerdict(
  zero: Outcome<ZeroResult>,
  inputs: Outcome<StressInputs>,
): Verdict {
  if (zero.ready && inputs.ready) {
    const { ready: _, ...known } = inputs;
    const reasons = roughReasons(zero, known);
    return { grade: reasons.length > 0 ? 'rough' : 'good', reasons };
  }
  const code = inputs.ready ? undefined : inputs.refusal?.code;
  const grade = code && noStress.includes(code) ? 'none' : 'waiting';
  return { grade, reasons: code ? [code] : [] };
}

/** What of a zero is judged. */
export type JudgedZero = Pick<ZeroResult, 'warnings' | 'torques' | 'dragTorque'> & {
  readonly stretch: Pick<StretchResult, 'topTorque'>;
};

/** Why a stress is rough; nothing where it is good. */
export function roughReasons(zero: JudgedZero, inputs: StressInputs): readonly RoughReason[] {
  const { value, expandedUncertainty } = worksheetBudget(stressOfStretch, inputs);
  const range = zero.stretch.topTorque - zero.dragTorque;
  const lowest = (Math.min(...zero.torques) - zero.dragTorque) / range;
  const found: readonly (readonly [RoughReason, boolean])[] = [
    ['neverStraight', zero.warnings.includes('neverStraight')],
    ['wideInterval', zero.warnings.includes('wideInterval')],
    ['wideStress', expandedUncertainty > roughUncertainty * value],
    ['startsHigh', lowest > highStart],
  ];
  return found.filter(([, is]) => is).map(([reason]) => reason);
}

/** How much wider than by the readings alone the stretch and the zero are taken. */
export const wideningOf = ({ grade }: Pick<Verdict, 'grade'>): number =>
  grade === 'rough' ? roughWidening : 1;

/** The inputs of the stress, its stretch as unsure as the verdict says. */
export function widenedInputs(
  inputs: Outcome<StressInputs>,
  verdict: Verdict,
): Outcome<StressInputs> {
  return whenReady({ inputs }, ({ inputs: known }) => ready(widened(known, verdict)));
}

/** The inputs that are there, likewise. */
export function widened(inputs: StressInputs, verdict: Pick<Verdict, 'grade'>): StressInputs {
  const standardDeviation = wideningOf(verdict) * inputs.stretch.standardDeviation;
  return { ...inputs, stretch: { ...inputs.stretch, standardDeviation } };
}
