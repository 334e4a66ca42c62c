/**
 * The measured stress at the top torque of the worksheet's series, with its uncertainty.
 * Units: SI only (Pa, N·m).
 * Source: definition; JCGM 101:2008 (GUM Supplement 1) for the trials, from memory.
 */
import { coverage } from '../../assumptions.ts';
import { propagateByTrials } from '../../trials.ts';
import type { WorksheetBudget } from '../budget.ts';
import { worksheetBudget } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import type { LoadReading } from '../load.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { worksheetTrials } from '../own-assumptions.ts';
import { worksheetDrag } from '../torque-at-hand.ts';
import { stressOfStretch } from './stress.ts';
import type { StressInputs } from './stress-inputs.ts';
import type { ZeroResult } from './zero.ts';

/** The stress at the top torque; its budget's lines are in Pa. */
export interface MeasuredResult extends Omit<WorksheetBudget, 'value'> {
  readonly stress: number; // Pa
  readonly low: number; // Pa, 95 %
  readonly high: number; // Pa
  readonly topTorque: number; // N·m
  readonly dragTorque: number; // N·m
  readonly dragTorqueUncertainty: number; // N·m, standard
  readonly slope: number; // Pa per N·m above the drag
  readonly loadReading: LoadReading; // how well wrench or gauge are read
  readonly operands: {
    readonly youngsModulus: number; // Pa
    readonly stretch: number; // m
    readonly gaugeLength: number; // m
    readonly misalignment: number;
  };
}

/** The 95 % interval of the measured stress by trials. */
export interface StressTrials {
  readonly stress: number; // Pa
  readonly standardUncertainty: number; // Pa
  readonly low: number; // Pa
  readonly high: number; // Pa
}

/** The stress at the top torque with its budget. */
export function worksheetMeasured(
  worksheet: Worksheet,
  zero: Outcome<ZeroResult>,
  inputs: Outcome<StressInputs>,
): Outcome<MeasuredResult> {
  const needs = { zero, inputs, drag: worksheetDrag(worksheet) };
  return whenReady(needs, ({ zero: { dragTorque, stretch, loadReading }, inputs: known, drag }) => {
    const { value: stress, ...budget } = worksheetBudget(stressOfStretch, known);
    return ready({
      ...budget,
      stress,
      low: stress - budget.expandedUncertainty,
      high: stress + budget.expandedUncertainty,
      topTorque: stretch.topTorque,
      dragTorque,
      dragTorqueUncertainty: drag.uncertainty,
      slope: stress / (stretch.topTorque - dragTorque),
      loadReading,
      operands: {
        youngsModulus: known.youngsModulus.value,
        stretch: known.stretch.value,
        gaugeLength: known.gaugeLength.value,
        misalignment: known.misalignment.value,
      },
    });
  });
}

/** The 95 % interval of the same stress by trials, for later: it takes up to seconds. Fixed seed. */
export function trialsOfMeasured(inputs: Outcome<StressInputs>): Outcome<StressTrials> {
  return whenReady({ inputs }, ({ inputs: known }) => {
    const result = propagateByTrials(stressOfStretch, known, {
      probability: coverage.probability,
      trials: 'adaptive',
      seed: worksheetTrials.seed,
    });
    const { value: stress, standardUncertainty, low, high } = result;
    return ready({ stress, standardUncertainty, low, high });
  });
}
