/**
 * Where the parts of the handle-to-band figure stand, on a wide page and on a phone, and how far the chain moves them.
 * Units: drawing units; sizes and travel of the mill in m.
 */

import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import type { State } from './state.ts';

/** One layout; wheels, strands, gauge and frame share one scale. */
export interface TurnLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** Drawing units for a metre of the mill. */
  readonly scale: number;
  /** How many times larger than the mill the movement of wheel and frame is drawn. */
  readonly times: number;
  /** Centre of the fixed wheel, height of both centres, half the height of the beam. */
  readonly left: number;
  readonly axis: number;
  readonly beam: number;
  /** Inner face of the end plate before any tension, and the plate's thickness. */
  readonly plate: number;
  readonly plateWidth: number;
  /** The handle seen along the screw: its centre on the same axis, and its reach. */
  readonly end: { readonly x: number; readonly reach: number };
  /** Lengths of arrows: for a newton, for a newton-metre, for a pascal. */
  readonly perForce: number;
  readonly perTorque: number;
  readonly perStress: number;
  /** The piece of one strand: left end, middle, length, drawing units for a metre of its width. */
  readonly strand: {
    readonly x: number;
    readonly y: number;
    readonly length: number;
    readonly scale: number;
  };
  /** The list of stages: top, right end, height of a row. */
  readonly list: { readonly top: number; readonly right: number; readonly row: number };
  /** The ribbon of work: left edge of its part of the sheet, its left end, place of the labels, top, width of the whole. */
  readonly ribbon: {
    readonly edge: number;
    readonly left: number;
    readonly label: number;
    readonly top: number;
    readonly whole: number;
  };
}

const WIDE: TurnLayout = {
  width: 880,
  height: 486,
  narrow: false,
  scale: 250,
  times: 60,
  left: 88,
  axis: 128,
  beam: 14,
  plate: 590,
  plateWidth: 12,
  end: { x: 798, reach: 54 },
  perForce: 0.0085,
  perTorque: 1,
  perStress: 0.36e-6,
  strand: { x: 126, y: 244, length: 112, scale: 1500 },
  list: { top: 302, right: 442, row: 27 },
  ribbon: { edge: 480, left: 548, label: 690, top: 326, whole: 84 },
};

const NARROW: TurnLayout = {
  width: 360,
  height: 462,
  narrow: true,
  scale: 92,
  times: 100,
  left: 32,
  axis: 70,
  beam: 6,
  plate: 236,
  plateWidth: 6,
  end: { x: 308, reach: 37 },
  perForce: 0.0027,
  perTorque: 0.9,
  perStress: 0.23e-6,
  strand: { x: 8, y: 156, length: 64, scale: 900 },
  list: { top: 184, right: 356, row: 20 },
  ribbon: { edge: 2, left: 73, label: 156, top: 326, whole: 46 },
};

/** The layout for a width of screen. */
export function turnLayout(narrow: boolean): TurnLayout {
  return narrow ? NARROW : WIDE;
}

/** The parts that the chain moves, in drawing units. */
export interface TurnPlaces {
  readonly radius: number;
  /** Centre of the movable wheel, before any tension and now. */
  readonly wheelAtRest: number;
  readonly wheel: number;
  /** Inner face of the end plate now. */
  readonly plate: number;
  /** Angle of the handle from where it stood before any tension, rad. */
  readonly angle: number;
}

/** Where wheel, plate and handle stand: the core's own travel, times the printed magnification. */
export function turnPlaces({ values }: State, layout: TurnLayout): TurnPlaces {
  const { left, scale, times, plate } = layout;
  const { wheelTravel, frameTravel, turns } = values;
  const wheelAtRest = left + OTTERSLEIGH.centreDistance * scale;
  return {
    radius: (OTTERSLEIGH.wheelDiameter / 2) * scale,
    wheelAtRest,
    wheel: wheelAtRest + wheelTravel * scale * times,
    plate: plate - frameTravel * scale * times,
    angle: 2 * Math.PI * turns,
  };
}

const TURNS_PER_STAGE = 0.02;

/** Whether a stage stands on the drawing yet: one after the other, as the handle begins to turn. */
export function isStageShown({ values }: State, stage: number): boolean {
  return values.turns >= (stage - 1) * TURNS_PER_STAGE;
}

/** What the parts of the drawing are given. */
export interface TurnPartProps {
  readonly state: State;
  readonly layout: TurnLayout;
  readonly places: TurnPlaces;
}
