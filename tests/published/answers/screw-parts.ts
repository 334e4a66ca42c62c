/** What the screw examples share: their units, and a screw of which only some is told. */
import { wornCollarDiameter } from '../../../src/core/screw/collar.ts';
import type { Screw } from '../../../src/core/screw/torque.ts';
import { siValue } from '../../../src/units/conversions.ts';
import { UNITS } from '../../../src/units/reading/table.ts';

export const degree = Math.PI / 180;
export const mm = 1e-3;
export const inch = siValue(1, UNITS.in.factor);
export const lbf = siValue(1, UNITS.lbf.factor);
export const poundInch = siValue(1, UNITS['in·lbf'].factor);

/** Square and without a collar, unless told otherwise. */
export function screwOf(
  part: Pick<Screw, 'meanDiameter' | 'lead' | 'threadFriction'> & Partial<Screw>,
): Screw {
  return { halfAngle: 0, collarFriction: 0, collarDiameter: 0, ...part };
}

/** A collar worn in, as the books take it. */
export const collarOf = (n: (path: string) => number) => ({
  collarFriction: n('collar > mu'),
  collarDiameter: wornCollarDiameter({
    outerDiameter: n('collar > Do') * mm,
    innerDiameter: n('collar > Di') * mm,
  }),
});
