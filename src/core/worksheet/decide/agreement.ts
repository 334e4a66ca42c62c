/**
 * Whether the worksheet's measurement and theory agree.
 * Units: SI only (Pa); E_n has no unit.
 * Source: ISO/IEC 17043 (E_n), from memory.
 */
import { agreementNumber } from '../../agreement.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { PredictedResult } from '../predict/prediction.ts';

/** How far measurement and theory differ, counted in their expanded uncertainties. */
export interface AgreementResult {
  readonly agreementNumber: number; // E_n, positive where more was measured than predicted
  readonly verdict: 'agree' | 'measuredHigher' | 'measuredLower';
  readonly operands: {
    readonly measured: number; // Pa
    readonly predicted: number; // Pa
    readonly expandedMeasured: number; // Pa
    readonly expandedPredicted: number; // Pa, twice the standard one
  };
}

/** E_n of the measured against the predicted stress; they agree from −1 to 1. */
export function worksheetAgreement(
  measuredOutcome: Outcome<MeasuredResult>,
  predictedOutcome: Outcome<PredictedResult>,
): Outcome<AgreementResult> {
  const needs = { measured: measuredOutcome, predicted: predictedOutcome };
  return whenReady(needs, ({ measured, predicted }) => {
    const score = agreementNumber(
      { value: measured.stress, expanded: measured.expandedUncertainty },
      { value: predicted.stress, expanded: predicted.expandedUncertainty },
    );
    const differs = score > 0 ? 'measuredHigher' : 'measuredLower';
    return ready({
      agreementNumber: score,
      verdict: Math.abs(score) <= 1 ? 'agree' : differs,
      operands: {
        measured: measured.stress,
        predicted: predicted.stress,
        expandedMeasured: measured.expandedUncertainty,
        expandedPredicted: predicted.expandedUncertainty,
      },
    });
  });
}
