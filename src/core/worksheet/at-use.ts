/**
 * What the band carries at the load that it is tightened to now, by each route.
 * Units: SI only (Pa; N·m of a torque, Pa of a pressure).
 * Source: definition.
 */
import { type BothResult, stressTogether } from './decide/both.ts';
import { stressAtTorque, type WayStress } from './decide/ways.ts';
import type { Worksheet } from './inputs.ts';
import { knownInputs } from './known-inputs.ts';
import type { MeasuredResult } from './measure/measured.ts';
import { type Outcome, ready, whenReady } from './outcome.ts';
import { type PredictedResult, worksheetPredicted } from './predict/prediction.ts';
import type { Theory } from './predict/theory.ts';
import { usedLoad } from './torque-at-hand.ts';

/** The stress at the load in use, by each route. */
export interface AtUse {
  readonly atUse: Outcome<WayStress>; // measured, on the straight line
  readonly predictedAtUse: Outcome<PredictedResult>;
  readonly bothAtUse: Outcome<BothResult>; // only where measured and predicted are joined at the top too
}

/** What is known at the top of the readings, and the calculation. */
interface Known {
  readonly theory: Outcome<Theory>;
  readonly measured: Outcome<MeasuredResult>;
  readonly both: Outcome<BothResult>;
}

/** All three; each waits for the load in use. */
export function worksheetAtUse(worksheet: Worksheet, { theory, measured, both }: Known): AtUse {
  const atUse = stressAtTorque(usedLoad(worksheet), measured);
  const predictedAtUse = worksheetPredicted(theory, knownInputs({ torque: usedLoad(worksheet) }));
  const needs = { both, measured: atUse, predicted: predictedAtUse };
  const bothAtUse = whenReady(needs, ({ measured, predicted }) =>
    ready(stressTogether(measured, predicted)),
  );
  return { atUse, predictedAtUse, bothAtUse };
}
