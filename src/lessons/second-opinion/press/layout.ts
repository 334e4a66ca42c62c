/** Where the parts of the press figure are, on a wide page and on a phone, in drawing units. */

/** One layout. */
export interface PressLayout {
  readonly width: number;
  readonly height: number;
  /** Axle of the left wheel, the level of both, units for a metre. */
  readonly left: number;
  readonly level: number;
  readonly perLength: number;
  /** How many times the movement is drawn larger than the lengths. */
  readonly times: number;
  /** From the band to the weight. */
  readonly cord: number;
  /** Length of an arrow for a newton of pull. */
  readonly perForce: number;
  /** Side of the weight's square for a kilogram. */
  readonly side: number;
  /** The level of the wheels' distance, and of the words on the pull. */
  readonly distance: number;
  readonly words: number;
}

const WIDE: PressLayout = {
  width: 880,
  height: 350,
  left: 160,
  level: 190,
  perLength: 415,
  times: 15,
  side: 15,
  cord: 26,
  perForce: 1 / 66,
  distance: 330,
  words: 40,
};

const NARROW: PressLayout = {
  width: 360,
  height: 240,
  left: 58,
  level: 112,
  perLength: 180,
  times: 25,
  side: 7,
  cord: 21,
  perForce: 1 / 150,
  distance: 206,
  words: 26,
};

/** The layout for a width of screen. */
export const pressLayout = (narrow: boolean): PressLayout => (narrow ? NARROW : WIDE);
