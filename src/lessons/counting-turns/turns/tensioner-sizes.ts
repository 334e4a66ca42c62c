/**
 * How large the parts of each tensioner are drawn, and how far the nut has gone along its screw.
 * Units: m; `scale` in drawing units for a metre on the wide page.
 * Source: invented, of the sizes usual on such mills: common practice, no source.
 */
import type { CountingMill } from '../mill.ts';
import type { MILLS } from '../mills.worked.ts';

/** One tensioner. */
export interface TensionerSizes {
  readonly scale: number;
  readonly plate: number;
  readonly bearing: number;
  readonly nut: number;
  readonly nutAcross: number;
  readonly screw: number;
  /** Screw that stands out of the nut before it is turned. */
  readonly proud: number;
}

const SIZES: Readonly<Record<keyof typeof MILLS, TensionerSizes>> = {
  stiffFrame: {
    scale: 2500,
    plate: 0.018,
    bearing: 0.014,
    nut: 0.022,
    nutAcross: 0.044,
    screw: 0.02,
    proud: 0.012,
  },
  discWashers: {
    scale: 3400,
    plate: 0.015,
    bearing: 0.004,
    nut: 0.013,
    nutAcross: 0.025,
    screw: 0.015875,
    proud: 0.006,
  },
  softSpring: {
    scale: 420,
    plate: 0.05,
    bearing: 0.024,
    nut: 0.045,
    nutAcross: 0.08,
    screw: 0.03175,
    proud: 0.03,
  },
  oil: { scale: 2500, plate: 0.018, bearing: 0, nut: 0, nutAcross: 0, screw: 0.022, proud: 0.016 },
};

/** The sizes of a mill by what the reader chooses. */
export function tensionerSizes(tensioner: keyof typeof MILLS): TensionerSizes {
  return SIZES[tensioner];
}

/** Length of a mill's spring without load, m; 0 where there is none. */
export function freeLength({ spring }: CountingMill): number {
  if (spring.kind === 'none') return 0;
  if (spring.kind === 'coil') return spring.coil.freeLength;
  const { disc, groupsInSeries } = spring.stack;
  return groupsInSeries * (disc.thickness + disc.coneHeight);
}

/** Outer diameter of a mill's spring, m; 0 where there is none. */
export function springDiameter({ spring }: CountingMill): number {
  if (spring.kind === 'none') return 0;
  if (spring.kind === 'coil') return spring.coil.meanDiameter + spring.coil.wire;
  return spring.stack.disc.outerDiameter;
}
