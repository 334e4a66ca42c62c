/**
 * The stress at a load that is planned, as it is known best: by the readings where there are some, else by calculation.
 * Units: SI only (Pa; N·m of a torque, Pa of a pressure).
 * Source: definition; where the two are apart, the one that reaches higher counts, as a limit is at stake: our choice.
 */
import { agreementNumber } from '../../agreement.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import { type Outcome, ready } from '../outcome.ts';
import { worksheetPredicted } from '../predict/prediction.ts';
import type { Theory } from '../predict/theory.ts';
import { stressAtTorque } from './ways.ts';

/** A stress with its interval, and what tells it. */
export interface StressAtLoad {
  readonly stress: number; // Pa
  readonly expandedUncertainty: number; // Pa, 95 %
  readonly by: 'readings' | 'calculation';
}

/** What a stress can be told by. */
export interface StressTellers {
  readonly theory: Outcome<Theory>;
  readonly measured: Outcome<MeasuredResult>;
}

const isApart = (a: StressAtLoad, b: StressAtLoad): boolean =>
  Math.abs(
    agreementNumber(
      { value: a.stress, expanded: a.expandedUncertainty },
      { value: b.stress, expanded: b.expandedUncertainty },
    ),
  ) > 1;

const reach = ({ stress, expandedUncertainty }: StressAtLoad): number =>
  stress + expandedUncertainty;

/** The stress at a load; undefined while nothing tells it, and where the load does not pull yet. */
export function stressAtLoad(
  { theory, measured }: StressTellers,
  load: number,
): StressAtLoad | undefined {
  const predicted = worksheetPredicted(theory, ready({ torque: load }));
  const read = stressAtTorque(['use.torque', load], measured);
  const calculated = predicted.ready && stressOf(predicted, 'calculation');
  const seen = read.ready && stressOf(read, 'readings');
  if (!seen || !calculated) return seen || calculated || undefined;
  return isApart(seen, calculated) && reach(calculated) > reach(seen) ? calculated : seen;
}

const stressOf = (
  { stress, expandedUncertainty }: Omit<StressAtLoad, 'by'>,
  by: StressAtLoad['by'],
): StressAtLoad => ({ stress, expandedUncertainty, by });
