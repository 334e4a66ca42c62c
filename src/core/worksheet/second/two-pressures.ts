/**
 * The stress that two pressures at the same reading of the dial tell, one while pumping and one while letting down: the
 * friction of seal and slide holds back as much in the one as it helps in the other. A spring that draws the piston back
 * does not cancel: it takes something up to the no-load pressure.
 * Units: SI only (Pa, m, m²).
 * Source: thrust = area · pressure ∓ friction, core/loop/hydraulic; derived here.
 */
import { sectionHalfWidths } from '../../assumptions.ts';
import { anywhereIn, rectangular, type WorksheetBudget, worksheetBudget } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import { loadReading, readLoadDoubt, scaleHalfWidth } from '../load.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import type { Chain } from '../predict/chain.ts';
import { thrustPerLoad } from '../predict/drive.ts';
import { strandOf } from '../predict/pull.ts';
import { worksheetDrag } from '../torque-at-hand.ts';

/** The stress; refused (`pressureNotLess`) where letting down takes as much as pumping. */
export function twoPressures(
  worksheet: Worksheet,
  { screw, section, strands }: Pick<Chain, 'screw' | 'section' | 'strands'>,
): Outcome<WorksheetBudget> {
  const { second, tensioner } = worksheet;
  const known = knownInputs({
    pumping: ['second.pumping', second.pumping],
    lettingDown: ['second.lettingDown', second.lettingDown],
    advantage: ['tensioner.advantage', tensioner.advantage],
  });
  const top = whenReady({ known }, ({ known: { pumping } }) => ready({ torque: pumping }));
  const needs = { known, screw, section, strands, drag: worksheetDrag(worksheet, top) };
  return whenReady(needs, ({ known, screw, section, strands, drag }) => {
    const { pumping, lettingDown, advantage } = known;
    if (lettingDown >= pumping)
      return refused('pressureNotLess', { pumping, lettingDown }, [
        'second.pumping',
        'second.lettingDown',
      ]);
    const { bodyWidth, thickness, thicknessHalfWidth } = section.operands;
    const gauge = loadReading(tensioner);
    const inputs = {
      pumping: { value: pumping, standardUncertainty: readLoadDoubt(gauge, pumping) },
      lettingDown: { value: lettingDown, standardUncertainty: readLoadDoubt(gauge, lettingDown) },
      gauge: rectangular(0, scaleHalfWidth(tensioner, pumping)),
      returnSpring: anywhereIn({ low: 0, high: drag.dragTorque }),
      bodyWidth: rectangular(bodyWidth, sectionHalfWidths.bodyWidth),
      thickness: rectangular(thickness, thicknessHalfWidth),
    };
    const perPressure = strandOf(advantage * thrustPerLoad(screw.drive), strands);
    const stressOf = (values: Readonly<Record<keyof typeof inputs, number>>) => {
      const middle = (values.pumping + values.lettingDown) / 2;
      const pulling = middle + values.gauge - values.returnSpring;
      return (perPressure * pulling) / (values.bodyWidth * values.thickness);
    };
    return ready(worksheetBudget(stressOf, inputs));
  });
}
