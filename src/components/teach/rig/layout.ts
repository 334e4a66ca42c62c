/**
 * Where the parts of the classroom rig stand on its drawing: along the strip in meters from the outer face of the fixed
 * end plate, across it in meters from the axis. A phone's drawing is shortened between the grips.
 * Units: SI in, drawing units out.
 */
import { BUILD, RIG } from '../../../models/mills/classroom-rig.ts';

const { plateThickness, gripLength, takeUp } = BUILD;

const fixedGrip = plateThickness;
const strip = fixedGrip + gripLength;
const movingGrip = strip + RIG.betweenGrips;
const rod = movingGrip + gripLength;
const farPlate = rod + takeUp;
const end = farPlate + plateThickness;
const middle = strip + RIG.betweenGrips / 2;

/** Along the rig, m. */
export const PLACES = {
  fixedGrip,
  strip,
  movingGrip,
  rod,
  farPlate,
  end,
  nut: end + 0.0025, // a washer further out
  rodEnd: end + 0.036,
  gaugeFrom: middle - RIG.gaugeLength / 2,
  gaugeTo: middle + RIG.gaugeLength / 2,
} as const;

/** A stretch of the rig and where it is drawn. */
interface Stretch {
  readonly from: number;
  readonly at: number; // drawing units
  readonly perMeter: number;
}

/** One drawing. */
export interface RigLayout {
  readonly narrow: boolean;
  readonly width: number;
  readonly height: number;
  /** Drawing units for a meter across the strip, and in the section through a grip. */
  readonly perMeter: number;
  readonly perMeterInSection: number;
  /** From a place along the rig to the drawing. */
  readonly along: (place: number) => number;
  /** Where the drawing is shortened, places along the rig. */
  readonly breaks: readonly number[];
  /** The axis in the view from the side and in that from above, and the middle of the section. */
  readonly side: number;
  readonly above: number;
  readonly section: { readonly x: number; readonly y: number };
  /** The levels of the dimensions and of the two rows of numbers. */
  readonly levels: {
    readonly gauge: number;
    readonly grips: number;
    readonly frame: number;
    readonly numbersAbove: number;
    readonly numbersBetween: number;
  };
}

const alongBy =
  (stretches: readonly Stretch[]) =>
  (place: number): number => {
    const own = stretches.findLast(({ from }) => place >= from) ?? (stretches[0] as Stretch);
    return own.at + (place - own.from) * own.perMeter;
  };

const WIDE: RigLayout = {
  narrow: false,
  width: 880,
  height: 360,
  perMeter: 680,
  perMeterInSection: 1500,
  along: alongBy([{ from: 0, at: 20, perMeter: 680 }]),
  breaks: [],
  side: 106,
  above: 268,
  section: { x: 794, y: 268 },
  levels: { gauge: 146, grips: 174, frame: 346, numbersAbove: 22, numbersBetween: 202 },
};

const NARROW: RigLayout = {
  narrow: true,
  width: 360,
  height: 434,
  perMeter: 500,
  perMeterInSection: 1500,
  along: alongBy([
    { from: 0, at: 12, perMeter: 500 },
    { from: 0.1, at: 62, perMeter: 285 },
    { from: 0.745, at: 246, perMeter: 500 },
  ]),
  breaks: [0.083, 0.69],
  side: 96,
  above: 234,
  section: { x: 180, y: 372 },
  levels: { gauge: 134, grips: 160, frame: 300, numbersAbove: 22, numbersBetween: 184 },
};

/** The layout for a width of screen. */
export const rigLayout = (narrow: boolean): RigLayout => (narrow ? NARROW : WIDE);
