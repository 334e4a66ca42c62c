/**
 * The second opinions of the worksheet, each held against what the dial and the screw say at its torque.
 * Units: SI only (Pa, N·m); E_n has no unit.
 * Source: definition.
 */
import { agreementNumber } from '../../agreement.ts';
import { likelyHarmonic } from '../../span/heard-note.ts';
import type { WorksheetBudget } from '../budget.ts';
import { stressAtTorque } from '../decide/ways.ts';
import type { InputValue, Worksheet } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import { loadIn } from '../load.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { Chain } from '../predict/chain.ts';
import { worksheetPredicted } from '../predict/prediction.ts';
import { worksheetLoosening } from './loosening.ts';
import { worksheetNote } from './note.ts';
import { worksheetPress } from './press.ts';

/** A stress with its 95 % interval. */
export interface StressSpan {
  readonly stress: number; // Pa
  readonly low: number; // Pa
  readonly high: number; // Pa
}

/** What one second opinion comes to, and what stands beside it at the same torque. */
export interface OpinionResult extends StressSpan {
  readonly standardUncertainty: number; // Pa
  readonly expandedUncertainty: number; // Pa
  readonly contributions: WorksheetBudget['contributions'];
  readonly torque?: number; // N·m
  readonly measured?: StressSpan;
  readonly predicted?: StressSpan;
  readonly agreementNumber?: number; // E_n against the measurement, else against the prediction
  readonly likelyHarmonic?: number; // of a note that fits neither, but would as that harmonic
}

/** The three, each waiting for its own boxes. */
export interface Opinions {
  readonly note: Outcome<OpinionResult>;
  readonly press: Outcome<OpinionResult>;
  readonly loosening: Outcome<OpinionResult>;
}

interface Known {
  readonly chain: Chain;
  readonly measured: Outcome<MeasuredResult>;
}

interface Beside {
  readonly span: StressSpan;
  readonly value: number; // Pa
  readonly expanded: number; // Pa
}

interface Besides {
  readonly torque?: number; // N·m
  readonly measured?: Beside;
  readonly predicted?: Beside;
}

/** What dial and screw say at a torque, as far as they do. */
function besides(torque: InputValue, { chain, measured }: Known): Besides {
  if (!isUsable(torque)) return {};
  const byDial = stressAtTorque(['use.torque', torque], measured);
  const byScrew = worksheetPredicted(chain.theory, ready({ torque }));
  const spanOf = (of: StressSpan & { readonly expandedUncertainty: number }): Beside => ({
    span: { stress: of.stress, low: of.low, high: of.high },
    value: of.stress,
    expanded: of.expandedUncertainty,
  });
  return {
    torque,
    ...(byDial.ready && { measured: spanOf(byDial) }),
    ...(byScrew.ready && { predicted: spanOf(byScrew) }),
  };
}

function opinion(
  budget: Outcome<WorksheetBudget>,
  torque: InputValue,
  known: Known,
): Outcome<OpinionResult> {
  return whenReady({ budget }, ({ budget }) => {
    const { value, standardUncertainty, expandedUncertainty, contributions } = budget;
    const { measured, predicted, ...at } = besides(torque, known);
    const other = measured ?? predicted;
    const own = { value, expanded: expandedUncertainty };
    return ready<OpinionResult>({
      stress: value,
      standardUncertainty,
      expandedUncertainty,
      low: Math.max(0, value - expandedUncertainty),
      high: value + expandedUncertainty,
      contributions,
      ...at,
      ...(measured && { measured: measured.span }),
      ...(predicted && { predicted: predicted.span }),
      ...(other && { agreementNumber: agreementNumber(own, other) }),
    });
  });
}

/** A note that fits as another harmonic says so. */
function withHarmonic(note: Outcome<OpinionResult>): Outcome<OpinionResult> {
  if (!note.ready) return note;
  const other = note.measured ?? note.predicted;
  const isApart = Math.abs(note.agreementNumber ?? 0) > 1;
  const harmonic = isApart && other ? likelyHarmonic(note.stress, other.stress) : undefined;
  return harmonic === undefined ? note : { ...note, likelyHarmonic: harmonic };
}

/** All three. */
export function worksheetOpinions(
  worksheet: Worksheet,
  chain: Chain,
  measured: Outcome<MeasuredResult>,
): Opinions {
  const { second } = worksheet;
  const known = { chain, measured };
  const tightened = worksheet.tensioner.kind === 'cylinder' ? second.pumping : second.tightening;
  const torque = loadIn(worksheet, second) ?? loadIn(worksheet, worksheet.use);
  return {
    note: withHarmonic(opinion(worksheetNote(worksheet), torque, known)),
    press: opinion(worksheetPress(worksheet), torque, known),
    loosening: opinion(worksheetLoosening(worksheet, chain), tightened, known),
  };
}
