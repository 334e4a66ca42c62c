/** Where the parts of the hold figure are, on a wide page and on a phone, in drawing units. */

/** One layout: the plot's edges, and the line of the grip under it. */
export interface HoldLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly grip: number;
}

const WIDE: HoldLayout = {
  width: 880,
  height: 360,
  narrow: false,
  left: 70,
  right: 850,
  top: 44,
  bottom: 268,
  grip: 326,
};

const NARROW: HoldLayout = {
  width: 360,
  height: 290,
  narrow: true,
  left: 40,
  right: 346,
  top: 40,
  bottom: 206,
  grip: 260,
};

/** The layout for a width of screen. */
export const holdLayout = (narrow: boolean): HoldLayout => (narrow ? NARROW : WIDE);
