/**
 * The measured stress at the top torque of the worksheet's series, with its uncertainty.
 * Units: SI only (Pa, N, N·m).
 * Source: definition; JCGM 101:2008 (GUM Supplement 1) for the trials, from memory.
 */
import { strandForce, wheelForce } from './section.ts';
import { propagateByTrials } from './trials.ts';
import type { WorksheetBudget } from './worksheet-budget.ts';
import { worksheetBudget } from './worksheet-budget.ts';
import { boxes } from './worksheet-boxes.ts';
import type { Worksheet } from './worksheet-form.ts';
import type { Outcome, Waiting } from './worksheet-outcome.ts';
import { ready, refused, whenReady } from './worksheet-outcome.ts';
import type { SectionResult, StrandsResult } from './worksheet-section.ts';
import type { StressScale } from './worksheet-stress.ts';
import { stressOfStretch } from './worksheet-stress.ts';
import type { ZeroResult } from './worksheet-zero.ts';

/** The stress at the top torque; its budget's lines are in Pa. */
export interface MeasuredResult extends Omit<WorksheetBudget, 'value'> {
  readonly stress: number; // Pa
  readonly low: number; // Pa, 95 %
  readonly high: number; // Pa
  readonly topTorque: number; // N·m
  readonly slope: number; // Pa per N·m above the drag
  readonly operands: {
    readonly youngsModulus: number; // Pa
    readonly stretch: number; // m
    readonly gaugeLength: number; // m
    readonly misalignment: number;
  };
}

/** The measured stress as forces; two strands share the wheel's load. */
export interface ForcesResult {
  readonly strandForce: number; // N
  readonly wheelForce: number; // N
  readonly operands: {
    readonly stress: number; // Pa
    readonly area: number; // m²
    readonly strandHalfAngle: number; // rad
  };
}

/** The 95 % interval of the measured stress by trials. */
export interface StressTrials {
  readonly stress: number; // Pa
  readonly standardUncertainty: number; // Pa
  readonly low: number; // Pa
  readonly high: number; // Pa
}

const mostStrain = 0.004; // more than the steel springs back from

/**
 * The stress at the top torque from the stretch; refused where the zero is too vague to carry one
 * (`zeroTooVague`) or the strain is more than steel springs back from (`tooMuchStretch`).
 */
export function worksheetMeasured(
  worksheet: Worksheet,
  zero: Outcome<ZeroResult>,
  scale: Outcome<StressScale>,
): Outcome<MeasuredResult> {
  const inputs = stressInputs(worksheet, zero, scale);
  return whenReady({ zero, inputs }, ({ zero: { dragTorque, stretch }, inputs: known }) => {
    const { value: stress, ...budget } = worksheetBudget(stressOfStretch, known);
    return ready({
      ...budget,
      stress,
      low: stress - budget.expandedUncertainty,
      high: stress + budget.expandedUncertainty,
      topTorque: stretch.topTorque,
      slope: stress / (stretch.topTorque - dragTorque),
      operands: {
        youngsModulus: known.youngsModulus.value,
        stretch: known.stretch.value,
        gaugeLength: known.gaugeLength.value,
        misalignment: known.misalignment.value,
      },
    });
  });
}

function stressInputs(
  { tensioner }: Worksheet,
  zeroOutcome: Outcome<ZeroResult>,
  scaleOutcome: Outcome<StressScale>,
) {
  const drag = boxes({
    uncertainty: [
      'tensioner.dragTorqueUncertainty',
      tensioner.dragTorqueUncertainty,
      'notNegative',
    ],
  });
  const needs = { zero: zeroOutcome, scale: scaleOutcome, drag };
  return whenReady(needs, ({ zero, scale: { ready: _, ...scale }, drag: { uncertainty } }) => {
    const { stretch, standardUncertainty, degreesOfFreedom, topTorque } = zero.stretch;
    const refusal = refuseStress(zero, stretch / scale.gaugeLength.value);
    if (refusal) return refusal;
    return ready({
      ...scale,
      stretch: { value: stretch, standardDeviation: standardUncertainty, degreesOfFreedom },
      drag: {
        value: 0,
        standardUncertainty: (stretch * uncertainty) / (topTorque - zero.dragTorque),
      },
    });
  });
}

function refuseStress(zero: ZeroResult, strain: number): Waiting | undefined {
  if (zero.warnings.includes('tooWideForStress'))
    return refused('zeroTooVague', { low: zero.low, high: zero.high }, ['readings']);
  if (strain > mostStrain)
    return refused('tooMuchStretch', { strain }, ['readings', 'rig.gaugeLength']);
  return undefined;
}

/** The 95 % interval of the same stress by trials, for later: it takes up to seconds. Fixed seed. */
export function trialsOfMeasured(
  worksheet: Worksheet,
  zero: Outcome<ZeroResult>,
  scale: Outcome<StressScale>,
): Outcome<StressTrials> {
  const inputs = stressInputs(worksheet, zero, scale);
  return whenReady({ inputs }, ({ inputs: known }) => {
    const result = propagateByTrials(stressOfStretch, known, {
      probability: 0.95,
      trials: 'adaptive',
      seed: 1,
    });
    const { value: stress, standardUncertainty, low, high } = result;
    return ready({ stress, standardUncertainty, low, high });
  });
}

/** The measured stress as forces in one strand and on the wheel. */
export function worksheetForces(
  measured: Outcome<MeasuredResult>,
  section: Outcome<SectionResult>,
  strands: Outcome<StrandsResult>,
): Outcome<ForcesResult> {
  return whenReady({ measured, section, strands }, (known) => {
    const operands = {
      stress: known.measured.stress,
      area: known.section.area,
      strandHalfAngle: known.strands.strandHalfAngle,
    };
    const strand = strandForce(operands.stress, operands.area);
    const wheel = wheelForce(strand, operands.strandHalfAngle);
    return ready({ strandForce: strand, wheelForce: wheel, operands });
  });
}
