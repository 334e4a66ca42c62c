/**
 * The stress that a tightening and a loosening torque at the same reading of the dial tell: friction, collar and the
 * no-load torque cancel in their difference, a dragging slide does not.
 * Units: SI only (Pa, N·m, m).
 * Source: core/screw/two-torques; wrench and slide, own-assumptions.ts.
 */
import { sectionHalfWidths } from '../../assumptions.ts';
import { thrustEstimateFromTwoTorques } from '../../screw/two-torques.ts';
import { strandForceAtWheel } from '../../section.ts';
import { anywhereIn, rectangular, type WorksheetBudget, worksheetBudget } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import { readTorqueDoubt } from '../measure/line.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { estimateShare, slideShare, wrenchScale } from '../own-assumptions.ts';
import type { Chain } from '../predict/chain.ts';

/** The stress; refused (`looseningNotLess`) where loosening takes as much as tightening. */
export function worksheetLoosening(
  { second, tensioner }: Worksheet,
  { screw, section, strands }: Pick<Chain, 'screw' | 'section' | 'strands'>,
): Outcome<WorksheetBudget> {
  const known = knownInputs({
    tightening: ['second.tightening', second.tightening],
    loosening: ['second.loosening', second.loosening],
    advantage: ['tensioner.advantage', tensioner.advantage],
  });
  return whenReady({ known, screw, section, strands }, ({ known, screw, section, strands }) => {
    const { tightening, loosening, advantage } = known;
    if (loosening >= tightening)
      return refused('looseningNotLess', { tightening, loosening }, [
        'second.tightening',
        'second.loosening',
      ]);
    const { bodyWidth, thickness, thicknessHalfWidth } = section.operands;
    const inputs = {
      tightening: { value: tightening, standardUncertainty: readTorqueDoubt(tightening) },
      loosening: { value: loosening, standardUncertainty: readTorqueDoubt(loosening) },
      wrench: rectangular(1, wrenchScale),
      slide: anywhereIn(slideShare),
      estimate: anywhereIn(estimateShare),
      bodyWidth: rectangular(bodyWidth, sectionHalfWidths.bodyWidth),
      thickness: rectangular(thickness, thicknessHalfWidth),
    };
    const perDifference = thrustEstimateFromTwoTorques(
      { tighteningTorque: 1, looseningTorque: 0 },
      screw.lead,
    );
    const stressOf = (values: Readonly<Record<keyof typeof inputs, number>>) => {
      const difference = values.wrench * (values.tightening - values.loosening);
      const thrust = perDifference * difference * (1 - values.estimate) * (1 - values.slide);
      const strand = strandForceAtWheel(advantage * thrust, strands.strandHalfAngle);
      return strand / (values.bodyWidth * values.thickness);
    };
    return ready(worksheetBudget(stressOf, inputs));
  });
}
