/**
 * The measured stress of the worksheet as forces.
 * Units: SI only (N).
 * Source: definition.
 */
import { strandForce } from '../../section.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { pullOf } from './pull.ts';
import type { SectionResult, StrandsResult } from './section.ts';

/** The measured stress as forces; two strands share the wheel's load, a single strip has all of it. */
export interface ForcesResult {
  readonly strandForce: number; // N
  readonly wheelForce: number; // N
  readonly operands: StrandsResult & {
    readonly stress: number; // Pa
    readonly area: number; // m²
  };
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
      ...known.strands,
    };
    const strand = strandForce(operands.stress, operands.area);
    return ready({ strandForce: strand, wheelForce: pullOf(strand, operands), operands });
  });
}
