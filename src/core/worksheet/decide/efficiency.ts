/**
 * The efficiency that screw or cylinder show in the measurement.
 * Units: SI only (Pa, N·m, m); efficiencies have no unit.
 * Source: JCGM 100:2008 (GUM) 5.1.6 (relative uncertainties of a product), from memory.
 */
import { coverage } from '../../assumptions.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import { scaleHalfWidth } from '../load.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import type { WorksheetPath } from '../path.ts';
import { type Drive, worksheetDrive } from '../predict/drive.ts';
import { efficiencyOfSlope } from '../predict/pull.ts';
import type { SectionResult, StrandsResult } from '../predict/section.ts';
import { areaDoubt } from '../predict/section.ts';

/** The screw's own efficiency, with its interval for k = 2. */
export interface EfficiencyResult {
  readonly efficiency: number;
  readonly standardUncertainty: number;
  readonly low: number;
  readonly high: number;
  readonly operands: StrandsResult & {
    readonly slope: number; // Pa per N·m
    readonly drive: Drive;
    readonly area: number; // m²
    readonly advantage: number;
  };
}

// What makes screw or cylinder seem to give back more than is put in.
const suspects = {
  screw: ['tensioner.thread'],
  cylinder: ['tensioner.cylinder.pistonDiameter', 'tensioner.cylinder.gaugeTop'],
  both: ['tensioner.advantage', 'band.bodyWidth', 'band.thickness'],
} as const satisfies Readonly<Record<string, readonly WorksheetPath[]>>;

/**
 * Own efficiency e = slope·s·A/(adv·k), slope from all readings together. Refused where it is above 1 for certain: that of
 * a screw never comes near, that of a cylinder is so close that it may seem to be.
 */
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
    pulling: worksheetDrive(tensioner),
    lever: knownInputs({ advantage: ['tensioner.advantage', tensioner.advantage] }),
  };
  return whenReady(needs, ({ measured, section, strands, pulling: { drive }, lever }) => {
    const operands = {
      slope: measured.slope,
      drive,
      area: section.area,
      ...strands,
      advantage: lever.advantage,
    };
    const efficiency = efficiencyOfSlope(measured.slope, operands);
    const standardUncertainty =
      efficiency *
      Math.hypot(
        measured.standardUncertainty / measured.stress,
        areaDoubt(section.operands),
        scaleHalfWidth(tensioner, measured.topTorque) / (measured.topTorque * Math.sqrt(3)),
      );
    const least =
      drive.kind === 'screw' ? efficiency : efficiency - coverage.factor * standardUncertainty;
    if (least > 1)
      return refused('ownEfficiencyAboveOne', { efficiency }, [
        ...suspects[drive.kind],
        ...suspects.both,
      ]);
    return ready({
      efficiency,
      standardUncertainty,
      low: efficiency - coverage.factor * standardUncertainty,
      high: efficiency + coverage.factor * standardUncertainty,
      operands,
    });
  });
}
