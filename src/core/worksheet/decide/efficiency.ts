/**
 * The screw's own efficiency, out of the measurement.
 * Units: SI only (Pa, N·m, m); efficiencies have no unit.
 * Source: JCGM 100:2008 (GUM) 5.1.6 (relative uncertainties of a product), from memory.
 */
import { coverage } from '../../assumptions.ts';
import { efficiencyFromSlope } from '../../screw/tensioner.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { wrenchScale } from '../own-assumptions.ts';
import type { WorksheetPath } from '../path.ts';
import type { SectionResult, StrandsResult } from '../predict/section.ts';
import { areaDoubt } from '../predict/section.ts';
import { worksheetThread } from '../predict/thread.ts';

/** The screw's own efficiency, with its interval for k = 2. */
export interface EfficiencyResult {
  readonly efficiency: number;
  readonly standardUncertainty: number;
  readonly low: number;
  readonly high: number;
  readonly operands: {
    readonly slope: number; // Pa per N·m
    readonly lead: number; // m
    readonly area: number; // m²
    readonly strandHalfAngle: number; // rad
    readonly advantage: number;
  };
}

// What makes a screw seem to give back more than is put in.
const suspects: readonly WorksheetPath[] = [
  'tensioner.thread',
  'tensioner.advantage',
  'band.bodyWidth',
  'band.thickness',
];

/** Own efficiency e = slope·l·A·cos β/(π·adv), slope from all readings together. */
export function worksheetEfficiency(
  { tensioner }: Worksheet,
  measuredOutcome: Outcome<MeasuredResult>,
  sectionOutcome: Outcome<SectionResult>,
  strandsOutcome: Outcome<StrandsResult>,
): Outcome<EfficiencyResult> {
  const needs = {
    measured: measuredOutcome,
    section: sectionOutcome,
    strands: strandsOutcome,
    thread: worksheetThread(tensioner),
    lever: knownInputs({ advantage: ['tensioner.advantage', tensioner.advantage] }),
  };
  return whenReady(needs, ({ measured, section, strands, thread: { lead }, lever }) => {
    const operands = {
      slope: measured.slope,
      lead,
      area: section.area,
      strandHalfAngle: strands.strandHalfAngle,
      advantage: lever.advantage,
    };
    const efficiency = efficiencyFromSlope(operands);
    if (efficiency > 1) return refused('ownEfficiencyAboveOne', { efficiency }, suspects);
    const standardUncertainty =
      efficiency *
      Math.hypot(
        measured.standardUncertainty / measured.stress,
        areaDoubt(section.operands),
        wrenchScale / Math.sqrt(3),
      );
    return ready({
      efficiency,
      standardUncertainty,
      low: efficiency - coverage.factor * standardUncertainty,
      high: efficiency + coverage.factor * standardUncertainty,
      operands,
    });
  });
}
