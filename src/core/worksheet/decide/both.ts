/**
 * What is known best of the worksheet's stress where measurement and prediction agree: both together.
 * Units: SI only (Pa).
 * Source: weighted mean as results are joined by CODATA, and JCGM 100:2008 (GUM) F.1.1, both from memory.
 */
import { agreementNumber, weightedMean } from '../../agreement.ts';
import { coverage } from '../../assumptions.ts';
import { tQuantile } from '../../student.ts';
import type { Worksheet } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import type { PredictedResult } from '../predict/prediction.ts';
import type { EfficiencyResult } from './efficiency.ts';

/** Both together, at the top torque: shown beside the two, never in their place. */
export interface BothResult {
  readonly stress: number; // Pa
  readonly standardUncertainty: number; // Pa
  readonly expandedUncertainty: number; // Pa, 95 %
  readonly low: number; // Pa
  readonly high: number; // Pa
}

/** What is joined. */
export interface Joined {
  readonly measured: Outcome<MeasuredResult>;
  readonly predicted: Outcome<PredictedResult>;
  readonly efficiency: Outcome<EfficiencyResult>;
}

interface Stress {
  readonly stress: number; // Pa
  readonly standardUncertainty: number; // Pa
  readonly expandedUncertainty: number; // Pa
}

const certain = tQuantile((1 + coverage.probability) / 2, Number.POSITIVE_INFINITY);
const asRounded = 0.03; // of the efficiency: by so much its typed ends may be rounded

/**
 * The two joined; refused where they disagree (`theyDisagree`), and where the screw's efficiency was
 * taken from these readings (`tunedFromReadings`), for then there is only one.
 */
export function worksheetBoth(worksheet: Worksheet, joined: Joined): Outcome<BothResult> {
  const { measured, predicted, efficiency } = joined;
  return whenReady({ measured, predicted }, (both) => {
    if (isTuned(worksheet, efficiency))
      return refused('tunedFromReadings', {}, [
        worksheet.tensioner.kind === 'screw'
          ? 'tensioner.friction.low'
          : 'tensioner.cylinder.sealLow',
      ]);
    return (
      differ(both.measured, both.predicted) ?? ready(stressTogether(both.measured, both.predicted))
    );
  });
}

function differ(measured: Stress, predicted: Stress) {
  const score = agreementNumber(
    { value: measured.stress, expanded: measured.expandedUncertainty },
    { value: predicted.stress, expanded: predicted.expandedUncertainty },
  );
  return Math.abs(score) > 1 ? refused('theyDisagree', {}, ['readings', 'tensioner']) : undefined;
}

/** Two stresses joined by their weights. */
export function stressTogether(...stresses: readonly [Stress, Stress]): BothResult {
  const { value, standardUncertainty } = weightedMean(
    stresses.map(({ stress, standardUncertainty: standard }) => ({ value: stress, standard })),
  );
  return interval(value, standardUncertainty, certain * standardUncertainty);
}

/** The ends of the efficiency that was typed, if one was; of a cylinder it is what the seal leaves. */
function believedEfficiency({ kind, friction, cylinder }: Worksheet['tensioner']) {
  if (kind === 'screw') return friction.kind === 'efficiency' ? [friction.low, friction.high] : [];
  const { sealLow, sealHigh } = cylinder;
  return [
    sealHigh === undefined ? undefined : 1 - sealHigh,
    sealLow === undefined ? undefined : 1 - sealLow,
  ];
}

/** Whether the ends of the efficiency that was typed are those that the readings gave. */
function isTuned({ tensioner }: Worksheet, own: Outcome<EfficiencyResult>): boolean {
  const [low, high] = believedEfficiency(tensioner);
  if (!own.ready || !isUsable(low) || !isUsable(high)) return false;
  const most = asRounded * own.efficiency;
  return Math.abs(low - own.low) <= most && Math.abs(high - own.high) <= most;
}

function interval(
  stress: number,
  standardUncertainty: number,
  expandedUncertainty: number,
): BothResult {
  const [low, high] = [stress - expandedUncertainty, stress + expandedUncertainty];
  return { stress, standardUncertainty, expandedUncertainty, low, high };
}
