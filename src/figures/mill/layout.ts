/** Where the parts of the mill on the title page stand, on a wide page and on a phone, in units of the drawing. */
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';

/** One layout; the wheels, the band and the frame share one scale. */
export interface MillLayout {
  readonly width: number;
  readonly height: number;
  /** Drawing units for a metre of the mill. */
  readonly scale: number;
  readonly narrow: boolean;
  /** Centres of the fixed and the movable wheel, and the height of both. */
  readonly left: number;
  readonly right: number;
  readonly axis: number;
  /** Radius at which the band runs. */
  readonly radius: number;
  /** Half the height of the frame's beam, its two ends, and where the handle turns. */
  readonly beam: number;
  readonly beamStart: number;
  readonly plate: number;
  readonly handle: number;
  /** Middle of the upper strand's gauge, and of the log under the lower one. */
  readonly middle: number;
  /** The section on its own: left end, middle line, drawing units for a metre. */
  readonly section: { readonly left: number; readonly y: number; readonly scale: number };
}

interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly left: number;
  readonly axis: number;
  readonly beam: number;
  readonly plate: number;
  readonly handle: number;
  readonly section: MillLayout['section'];
}

const WIDE: Sheet = {
  width: 880,
  height: 440,
  scale: 370,
  left: 118,
  axis: 178,
  beam: 23,
  plate: 742,
  handle: 812,
  section: { left: 24, y: 394, scale: 5200 },
};

const NARROW: Sheet = {
  width: 360,
  height: 262,
  scale: 142,
  left: 46,
  axis: 98,
  beam: 10,
  plate: 298,
  handle: 336,
  section: { left: 10, y: 216, scale: 4300 },
};

/** The layout for a width of screen. */
export function millLayout(narrow: boolean): MillLayout {
  const sheet = narrow ? NARROW : WIDE;
  const { scale, left } = sheet;
  const right = left + OTTERSLEIGH.centreDistance * scale;
  const radius = (OTTERSLEIGH.wheelDiameter / 2) * scale;
  return {
    ...sheet,
    narrow,
    right,
    radius,
    beamStart: left - radius * 0.45,
    middle: (left + right) / 2,
  };
}
