/**
 * The calculating side of the worksheet, composed: section, strands, screw, and the chain through them.
 * Units: SI only (m, m², rad, N·m, Pa).
 * Source: definition.
 */
import type { Worksheet } from '../inputs.ts';
import type { Outcome } from '../outcome.ts';
import { worksheetScrew } from './screw.ts';
import type { ScrewModel } from './screw-model.ts';
import type { SectionResult, StrandsResult } from './section.ts';
import { worksheetSection, worksheetStrands } from './section.ts';
import type { Theory } from './theory.ts';
import { worksheetTheory } from './theory.ts';

/** What follows without any reading. */
export interface Chain {
  readonly section: Outcome<SectionResult>;
  readonly strands: Outcome<StrandsResult>;
  readonly screw: Outcome<ScrewModel>;
  readonly theory: Outcome<Theory>;
}

/** Everything that follows from the mill, the band and the screw. */
export function worksheetChain(worksheet: Worksheet): Chain {
  const section = worksheetSection(worksheet);
  const strands = worksheetStrands(worksheet);
  const screw = worksheetScrew(worksheet.tensioner);
  return { section, strands, screw, theory: worksheetTheory(worksheet, screw, section, strands) };
}
