/**
 * How large the cylinder of the hydraulic mill is drawn.
 * Units: m.
 * Source: invented, of the sizes usual on such mills: common practice, no source.
 */
import { MILLS } from '../mills.worked.ts';

/** The cylinder of the hydraulic mill as it is drawn, m. */
export const CYLINDER = {
  bore: MILLS.oil.cylinder.bore,
  wall: 0.005,
  end: 0.006,
  inside: 0.036,
  piston: 0.012,
  rest: 0.006,
} as const;
