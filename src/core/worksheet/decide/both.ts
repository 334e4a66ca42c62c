/**
 * What is known best of the worksheet's stress where measurement and prediction agree: both together.
 * Units: SI only (Pa, m).
 * Source: weighted mean as results are joined by CODATA, and JCGM 100:2008 (GUM) F.1.1, both from memory;
 * joined inside the fit where the dial alone is too vague, derived here; tested by simulation.
 */
import { agreementNumber, weightedMean } from '../../agreement.ts';
import { coverage } from '../../assumptions.ts';
import { tQuantile } from '../../student.ts';
import { zeroFromTorque } from '../../zero.ts';
import { worksheetBudget } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { StressScale } from '../measure/stress.ts';
import { stressOfStretch, worksheetStressScale } from '../measure/stress.ts';
import type { KnownStretch } from '../measure/stress-inputs.ts';
import { stressInputs } from '../measure/stress-inputs.ts';
import type { ZeroResult } from '../measure/zero.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import type { PredictedResult } from '../predict/prediction.ts';
import { worksheetDrag } from '../torque-at-hand.ts';
import type { EfficiencyResult } from './efficiency.ts';

/** Both together, at the top torque: shown beside the two, never in their place. */
export interface BothResult {
  readonly stress: number; // Pa
  readonly standardUncertainty: number; // Pa
  readonly expandedUncertainty: number; // Pa, 95 %
  readonly low: number; // Pa
  readonly high: number; // Pa
  readonly joined: 'mean' | 'inFit'; // as results, or as one more row among the readings
}

/** What is joined. */
export interface Joined {
  readonly zero: Outcome<ZeroResult>;
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
  const isVague = !measured.ready && measured.refusal?.code === 'zeroTooVague';
  if (isVague) return joinedInFit(worksheet, joined);
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
  return interval(value, standardUncertainty, certain * standardUncertainty, 'mean');
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

/** One more row among the readings: the stretch D = σ·L₀·fₐ/E of the prediction, as unsure as that is. */
function joinedInFit(worksheet: Worksheet, { zero, predicted }: Joined): Outcome<BothResult> {
  const needs = {
    zero,
    predicted,
    scale: worksheetStressScale(worksheet),
    drag: worksheetDrag(worksheet),
  };
  return whenReady(needs, ({ zero: found, predicted: theory, scale, drag }) => {
    const stressOf = (stretch: KnownStretch) =>
      budgetOf(scale, stretch, found.dragTorque, drag.uncertainty);
    const apart = differ(stressOf(found.stretch), theory);
    return apart ?? ready(joinedStress(found, theory, scale, stressOf));
  });
}

function joinedStress(
  found: ZeroResult,
  theory: PredictedResult,
  { gaugeLength, misalignment, youngsModulus, warmthTogether }: StressScale,
  stressOf: (stretch: KnownStretch) => Stress,
): BothResult {
  const perStress = (gaugeLength.value * misalignment.value) / youngsModulus.value;
  const { elongation, sdElongation, degreesOfFreedom } = zeroFromTorque({
    torques: found.torques,
    readings: found.elongations,
    series: found.series,
    dragTorque: found.dragTorque,
    repeatability: found.repeatability,
    known: {
      elongation: perStress * theory.stress - warmthTogether.value * gaugeLength.value,
      standardUncertainty: perStress * theory.standardUncertainty,
    },
  });
  const known = { stretch: elongation, standardUncertainty: sdElongation, degreesOfFreedom };
  const both = stressOf({ ...known, topTorque: found.stretch.topTorque });
  return interval(both.stress, both.standardUncertainty, both.expandedUncertainty, 'inFit');
}

function budgetOf(
  scale: StressScale,
  stretch: KnownStretch,
  dragTorque: number,
  dragUncertainty: number,
): Stress {
  const inputs = stressInputs(scale, stretch, dragTorque, dragUncertainty);
  const { value, standardUncertainty, expandedUncertainty } = worksheetBudget(
    stressOfStretch,
    inputs,
  );
  return { stress: value, standardUncertainty, expandedUncertainty };
}

function interval(
  stress: number,
  standardUncertainty: number,
  expandedUncertainty: number,
  joined: BothResult['joined'],
): BothResult {
  const [low, high] = [stress - expandedUncertainty, stress + expandedUncertainty];
  return { stress, standardUncertainty, expandedUncertainty, low, high, joined };
}
