/**
 * The measured stress of the worksheet as forces.
 * Units: SI only (N).
 * Source: definition.
 */
import { strandForce, wheelForce } from '../../section.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { SectionResult, StrandsResult } from './section.ts';

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
