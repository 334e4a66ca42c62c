/**
 * The bar's own weight on a level strand bends the band under it, and that dies only as one over
 * the tension: no straight line removes it, so it is taken out of each reading.
 * Units: SI only (m, N, N·m).
 * Source: derived here (string with two clamp loads: the reading shifts by −hW/(2T)).
 */
import { stress } from '../../elasticity.ts';
import { sectionArea, strandForce } from '../../section.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';

/** What the bar's weight takes from the reading at the top load, in m. */
export interface BarWeightResult {
  readonly shiftAtTop: number;
}

// Nearer to slack the strand's own stiffness carries the bar; what is left there dies with the load
// and counts as toe.
const leastShare = 0.1;

/** What to add to a reading at a share of the top load, m; as at a tenth of it below that. */
export function shiftAtShare(shiftAtTop: number, share: number): number {
  return shiftAtTop / Math.max(share, leastShare);
}

/**
 * Shift hW/(2T) at the top load, T from a first pass over the readings (`stretch` at the top load
 * in m, > 0); none where the bar's height and weight are both empty.
 */
export function worksheetBarWeight(
  { band, rig }: Worksheet,
  stretch: () => number,
): Outcome<BarWeightResult> {
  if (rig.barHeight === undefined && rig.barWeight === undefined) return ready({ shiftAtTop: 0 });
  const known = knownInputs({
    barHeight: ['rig.barHeight', rig.barHeight, 'finite'],
    barWeight: ['rig.barWeight', rig.barWeight, 'notNegative'],
    gaugeLength: ['rig.gaugeLength', rig.gaugeLength],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
    width: ['band.bodyWidth', band.bodyWidth],
    thickness: ['band.thickness', band.thickness],
  });
  return whenReady({ known }, ({ known: { barHeight, barWeight, ...steel } }) => {
    const topStress = stress({ ...steel, elongation: stretch() }, steel.youngsModulus);
    const topForce = strandForce(topStress, sectionArea(steel));
    return ready({ shiftAtTop: (barHeight * barWeight) / (2 * topForce) });
  });
}
