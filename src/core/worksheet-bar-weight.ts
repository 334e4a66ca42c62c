/**
 * The bar's own weight on a level strand bends the band under it, and that dies only as one over
 * the tension: no straight line removes it, so it is taken out of each reading.
 * Units: SI only (m, N, N·m).
 * Source: derived here (string with two clamp loads: the reading shifts by −hW/(2T)).
 */
import { sectionArea, strandForce } from './section.ts';
import { boxes } from './worksheet-boxes.ts';
import type { Worksheet } from './worksheet-form.ts';
import type { Outcome } from './worksheet-outcome.ts';
import { ready, whenReady } from './worksheet-outcome.ts';
import { stress } from './elasticity.ts';

/** What to add to each reading, in m. */
export interface BarWeightResult {
  readonly corrections: readonly number[];
}

// Nearer to slack the strand's own stiffness carries the bar; what is left there dies with the load
// and counts as toe.
const leastShare = 0.1;

/**
 * Correction hW/(2T) at each share of the top load, T from a first pass (`stretch` at the top load
 * in m, > 0) and never taken below a tenth of its top; none where height and weight are both empty.
 */
export function worksheetBarWeight(
  { band, rig }: Worksheet,
  loadShares: readonly number[],
  stretch: () => number,
): Outcome<BarWeightResult> {
  if (rig.barHeight === undefined && rig.barWeight === undefined)
    return ready({ corrections: loadShares.map(() => 0) });
  const known = boxes({
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
    const atTop = (barHeight * barWeight) / (2 * topForce);
    return ready({ corrections: loadShares.map((share) => atTop / Math.max(share, leastShare)) });
  });
}
