/**
 * The stress that a tightening and a loosening torque at the same reading of the dial tell: friction, collar and the
 * no-load torque cancel in their difference, a dragging slide does not. Of a cylinder, two pressures: friction cancels
 * in their middle.
 * Units: SI only (Pa, N·m, m).
 * Source: core/screw/two-torques; two-pressures.ts; wrench and slide, own-assumptions.ts.
 */
import { sectionHalfWidths } from '../../assumptions.ts';
import { thrustEstimateFromTwoTorques } from '../../screw/two-torques.ts';
import { anywhereIn, rectangular, type WorksheetBudget, worksheetBudget } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import { loadReading, readLoadDoubt, wrenchShare } from '../load.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { estimateShare, slideShare } from '../own-assumptions.ts';
import type { Chain } from '../predict/chain.ts';
import { thrustPerLoad } from '../predict/drive.ts';
import { strandOf } from '../predict/pull.ts';
import { twoPressures } from './two-pressures.ts';

/** The stress; refused (`looseningNotLess`) where loosening takes as much as tightening. */
export function worksheetLoosening(
  worksheet: Worksheet,
  chain: Pick<Chain, 'screw' | 'section' | 'strands'>,
): Outcome<WorksheetBudget> {
  const isCylinder = worksheet.tensioner.kind === 'cylinder';
  return isCylinder ? twoPressures(worksheet, chain) : twoTorques(worksheet, chain);
}

function twoTorques(
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
    const wrench = loadReading(tensioner);
    if (loosening >= tightening)
      return refused('looseningNotLess', { tightening, loosening }, [
        'second.tightening',
        'second.loosening',
      ]);
    const { bodyWidth, thickness, thicknessHalfWidth } = section.operands;
    const inputs = {
      tightening: { value: tightening, standardUncertainty: readLoadDoubt(wrench, tightening) },
      loosening: { value: loosening, standardUncertainty: readLoadDoubt(wrench, loosening) },
      wrench: rectangular(1, wrenchShare(tensioner)),
      slide: anywhereIn(slideShare),
      estimate: anywhereIn(estimateShare),
      bodyWidth: rectangular(bodyWidth, sectionHalfWidths.bodyWidth),
      thickness: rectangular(thickness, thicknessHalfWidth),
    };
    // Of a lead of 2π the thrust is what k is for the screw's own: 2π/l.
    const perDifference =
      thrustPerLoad(screw.drive) *
      thrustEstimateFromTwoTorques({ tighteningTorque: 1, looseningTorque: 0 }, 2 * Math.PI);
    const stressOf = (values: Readonly<Record<keyof typeof inputs, number>>) => {
      const difference = values.wrench * (values.tightening - values.loosening);
      const thrust = perDifference * difference * (1 - values.estimate) * (1 - values.slide);
      return strandOf(advantage * thrust, strands) / (values.bodyWidth * values.thickness);
    };
    return ready(worksheetBudget(stressOf, inputs));
  });
}
