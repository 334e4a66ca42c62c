/**
 * The highest stress in the worksheet's band as it goes round the smaller wheel; a single strip is not bent.
 * Units: SI only (Pa, m).
 * Source: bending of a narrow strip with its edge factor, derived in wheel.ts and wide-strip.ts.
 */
import { edgeFactor } from '../../assumptions.ts';
import { bendingStress } from '../../wheel.ts';
import type { Worksheet } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import type { SectionResult } from '../predict/section.ts';

/** Diameter of the smaller wheel, m; undefined while neither is filled, and where there is none. */
export function smallerWheel({ mill }: Worksheet): number | undefined {
  if (mill.strands === 'one') return undefined;
  const filled = [mill.wheelDiameter1, mill.wheelDiameter2].filter((size) => isUsable(size));
  return filled.length === 0 ? undefined : Math.min(...filled);
}

/** Tension with bending over the smaller wheel at rest, Pa; undefined until wheel and band are known. Of a strip the tension. */
export function peakStress(
  worksheet: Worksheet,
  stress: number,
  section: Outcome<SectionResult>,
): number | undefined {
  if (worksheet.mill.strands === 'one') return stress;
  const wheelDiameter = smallerWheel(worksheet);
  const { youngsModulus } = worksheet.band;
  if (!(section.ready && isUsable(wheelDiameter) && isUsable(youngsModulus))) return undefined;
  const { thickness } = section.operands;
  return stress + edgeFactor * bendingStress({ youngsModulus, thickness, wheelDiameter });
}
