/**
 * Where the parts of the mill stand, on a wide page and on a phone, and how far a pull moves its wheel.
 * Units: drawing units; sizes and travel of the mill in m.
 */
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';

/** One layout; the wheels, the band and the frame share one scale. */
export interface MillLayout {
  /** Drawing units for a metre of the mill. */
  readonly scale: number;
  /** How many times larger than the mill the movement of its wheel is drawn. */
  readonly times: number;
  readonly narrow: boolean;
  /** Centres of the fixed wheel and, without tension, of the movable one; the height of both. */
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
  /** The handle seen along the screw: its centre and its reach. */
  readonly end: { readonly x: number; readonly y: number; readonly reach: number };
  /** Middle of the upper strand's gauge, and of the log under the lower one; radius of the dial. */
  readonly middle: number;
  readonly dial: number;
  /** Length of an arrow for a newton, for a newton-metre. */
  readonly perForce: number;
  readonly perTorque: number;
}

type Given = Omit<MillLayout, 'narrow' | 'right' | 'radius' | 'beamStart' | 'middle'>;

const WIDE: Given = {
  scale: 320,
  times: 25,
  left: 96,
  axis: 160,
  beam: 19,
  plate: 650,
  handle: 692,
  end: { x: 798, y: 160, reach: 60 },
  dial: 24,
  perForce: 0.0145,
  perTorque: 1,
};

const NARROW: Given = {
  scale: 142,
  times: 25,
  left: 46,
  axis: 84,
  beam: 9,
  plate: 296,
  handle: 322,
  end: { x: 302, y: 206, reach: 42 },
  dial: 15,
  perForce: 0.006,
  perTorque: 0.8,
};

/** The layout for a width of screen, with what a drawing has otherwise. */
export function millLayout(narrow: boolean, otherwise: Partial<Given> = {}): MillLayout {
  const given = { ...(narrow ? NARROW : WIDE), ...otherwise };
  const { scale, left } = given;
  const right = left + OTTERSLEIGH.centreDistance * scale;
  const radius = (OTTERSLEIGH.wheelDiameter / 2) * scale;
  const beamStart = left - radius * 0.45;
  return { ...given, narrow, right, radius, beamStart, middle: (left + right) / 2 };
}

/** Where the movable wheel's centre stands once it has come out so far, in m. */
export const wheelAt = ({ right, scale, times }: MillLayout, travel: number): number =>
  right + travel * scale * times;
