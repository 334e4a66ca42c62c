/**
 * The stages in which a sheet is filled in, from four boxes to a series of readings, and the interval that it shows
 * at each.
 * Units: SI only (N·m, Pa); half-widths as shares of the truth.
 * Source: definition.
 */
import { coverage } from '../../src/core/assumptions.ts';
import { propagateByTrials } from '../../src/core/trials.ts';
import { worksheetTrials } from '../../src/core/worksheet/own-assumptions.ts';
import {
  emptyWorksheet,
  evaluateWorksheet,
  type Worksheet,
  worksheetChain,
} from '../../src/core/worksheet.ts';
import type { StudyMill } from './range-mills.ts';

/** An interval that the sheet shows. */
export interface ShownInterval {
  readonly low: number; // Pa
  readonly high: number; // Pa
  readonly firstOrder: number; // half-width to first order, as a share of the stress: free of the chance in trials
}

/** The stages: each adds something true to the one before. */
export const STAGES = [
  'fourBoxes',
  'collarKind',
  'collarSizes',
  'threadFriction',
  'noLoadTorque',
  'micrometer',
  'wheels',
  'dial',
  'threeSeries',
] as const;
/** One of them. */
export type Stage = (typeof STAGES)[number];

function collarKind({ collar }: Worksheet['tensioner']): Worksheet['tensioner']['collar'] {
  const ring = { outerDiameter: undefined, innerDiameter: undefined };
  if (collar.kind === 'bearing') return { kind: 'bearing', ...ring };
  if (collar.kind !== 'washer') return collar;
  // The invented mills write a ball bearing's friction as that of a washer.
  const isBearing = (collar.frictionLow ?? 1) < 0.01;
  if (isBearing) return { kind: 'bearing', ...ring };
  return { kind: 'washer', frictionLow: undefined, frictionHigh: undefined, ...ring };
}

/** The sheet of a mill at a stage. */
export function sheetAt(mill: StudyMill, stage: Stage): Worksheet {
  const { sheet, torque } = mill;
  const has = (other: Stage) => STAGES.indexOf(stage) >= STAGES.indexOf(other);
  const { tensioner, band } = sheet;
  const known = { ...emptyWorksheet.tensioner, thread: tensioner.thread, starts: tensioner.starts };
  const collar = has('collarSizes') ? tensioner.collar : collarKind(tensioner);
  return {
    ...emptyWorksheet,
    mill: has('wheels') ? sheet.mill : emptyWorksheet.mill,
    band: has('micrometer')
      ? band
      : { ...band, thickness: mill.labelThickness, thicknessFrom: 'unasked' },
    tensioner: {
      ...known,
      advantage: tensioner.advantage, // a lever belongs to the thread
      ...(has('collarKind') && { collar }),
      ...(has('threadFriction') && { friction: tensioner.friction }),
      ...(has('noLoadTorque') && {
        dragTorque: tensioner.dragTorque,
        dragTorqueUncertainty: tensioner.dragTorqueUncertainty,
      }),
    },
    use: { torque },
    ...(has('dial') && {
      rig: sheet.rig,
      readings: has('threeSeries') ? mill.threeSeries : sheet.readings,
    }),
  };
}

/** The interval shown: both together where they agree, else that of the measurement, and the prediction's by trials until then. */
export function shownInterval(sheet: Worksheet, trials: number): ShownInterval | undefined {
  const { both, measured, predicted } = evaluateWorksheet(sheet);
  const best = both.ready ? both : measured;
  if (best.ready) {
    const { low, high, stress, expandedUncertainty } = best;
    return { low, high, firstOrder: expandedUncertainty / stress };
  }
  const { theory } = worksheetChain(sheet);
  if (!theory.ready || !predicted.ready || sheet.readings.length > 0) return undefined;
  const { seed } = worksheetTrials;
  const inputs = theory.inputsAt(predicted.operands.torque);
  const options = { probability: coverage.probability, trials, seed };
  const { low, high } = propagateByTrials(theory.stressOf, inputs, options);
  return { low, high, firstOrder: predicted.expandedUncertainty / predicted.stress };
}
