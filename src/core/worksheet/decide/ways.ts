/**
 * What each named way of setting the band comes to: by the straight line at its torque, and by
 * readings of its own in the same clamping, minus the zero.
 * Units: SI only (Pa, m, N·m).
 * Source: JCGM 100:2008 (GUM) 5.1.6, from memory.
 */
import { mean } from '../../summary.ts';
import type { SeriesZero } from '../../zero.ts';
import { worksheetBudget } from '../budget.ts';
import { relativeDoubt } from '../doubt.ts';
import type { Worksheet, WorksheetWay } from '../inputs.ts';
import { knownInputs, type WantedInput } from '../known-inputs.ts';
import { loadIn, loadName } from '../load.ts';
import { shiftAtShare } from '../measure/bar-weight.ts';
import { usableDialReading, worksheetElongations } from '../measure/dial.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { RowsResult } from '../measure/readings.ts';
import { firstOfSeries } from '../measure/readings.ts';
import { stressOfStretch } from '../measure/stress.ts';
import type { StressInputs } from '../measure/stress-inputs.ts';
import type { Verdict } from '../measure/verdict.ts';
import { wideningOf } from '../measure/verdict.ts';
import type { ZeroResult } from '../measure/zero.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';

/** The stress that a way gives, with its 95 % interval. */
export interface WayStress {
  readonly stress: number; // Pa
  readonly standardUncertainty: number; // Pa
  readonly expandedUncertainty: number; // Pa
  readonly low: number; // Pa
  readonly high: number; // Pa
  readonly stretch: number; // m from zero
}

/** One named way; each of the two waits for its own inputs. */
export interface WayResult {
  readonly name: string;
  readonly fromTorque: Outcome<WayStress>;
  readonly fromReadings: Outcome<WayStress>;
}

/** What the series has shown. */
export interface SeriesShown {
  readonly rows: Outcome<RowsResult>;
  readonly zero: Outcome<ZeroResult>;
  readonly inputs: Outcome<StressInputs>;
  readonly measured: Outcome<MeasuredResult>;
  readonly verdict: Verdict;
}

/** Every way of the worksheet, in its order. */
export function worksheetWays(worksheet: Worksheet, shown: SeriesShown): readonly WayResult[] {
  return worksheet.ways.map((way, place) => ({
    name: way.name,
    fromTorque: stressAtTorque(
      [`ways.${place}.${loadName(worksheet.tensioner)}`, loadIn(worksheet, way)],
      shown.measured,
    ),
    fromReadings: stressOfReadings(worksheet, way, `ways.${place}.readings`, shown),
  }));
}

/** The stress at a torque, on the straight line through the readings; refused (`belowDrag`) where it only turns the empty screw. */
export function stressAtTorque(
  input: WantedInput,
  measuredOutcome: Outcome<MeasuredResult>,
): Outcome<WayStress> {
  const own = knownInputs({ torque: input });
  return whenReady({ measured: measuredOutcome, own }, ({ measured, own: { torque } }) => {
    const { dragTorque, topTorque, slope, operands } = measured;
    if (torque <= dragTorque) return refused('belowDrag', { torque, dragTorque }, [input[0]]);
    const stress = slope * (torque - dragTorque);
    const standardUncertainty = stress * relativeDoubt(measured, torque);
    const stretch = (operands.stretch * (torque - dragTorque)) / (topTorque - dragTorque);
    return ready(
      interval(stress, stretch, standardUncertainty, measured.coverageFactor * standardUncertainty),
    );
  });
}

/** Mean of the way's readings minus the zero; refused (`belowZero`) where the band is not tight there. */
function stressOfReadings(
  { rig }: Worksheet,
  way: WorksheetWay,
  input: `ways.${number}.readings`,
  { rows, zero: zeroOutcome, inputs: inputsOutcome, verdict }: SeriesShown,
): Outcome<WayStress> {
  const usable = way.readings.map(usableDialReading).filter((reading) => reading !== undefined);
  if (usable.length === 0) return { ready: false, waitsFor: [input] };
  const travel = whenReady({ rows, zero: zeroOutcome }, ({ rows: { firsts }, zero }) => {
    const first = firstOfSeries(firsts, (zero.zeros.at(-1) as SeriesZero).series);
    return worksheetElongations(rig, () => first, usable);
  });
  const needs = { travel, zero: zeroOutcome, inputs: inputsOutcome };
  return whenReady(needs, ({ travel: { elongations }, zero, inputs }) => {
    const shown = mean(elongations) - zero.zero;
    const stretch = shown + shiftAtShare(zero.barShiftAtTop, shown / zero.stretch.stretch);
    if (stretch <= 0) return refused('belowZero', { stretch }, [input]);
    const scatter = zero.repeatability / Math.sqrt(usable.length);
    const standardDeviation = wideningOf(verdict) * Math.hypot(zero.standardUncertainty, scatter);
    const ownStretch = { ...inputs.stretch, value: stretch, standardDeviation };
    const budget = worksheetBudget(stressOfStretch, { ...inputs, stretch: ownStretch });
    const { value, standardUncertainty, expandedUncertainty } = budget;
    return ready(interval(value, stretch, standardUncertainty, expandedUncertainty));
  });
}

function interval(
  stress: number,
  stretch: number,
  standardUncertainty: number,
  expandedUncertainty: number,
): WayStress {
  return {
    stress,
    stretch,
    standardUncertainty,
    expandedUncertainty,
    low: stress - expandedUncertainty,
    high: stress + expandedUncertainty,
  };
}
