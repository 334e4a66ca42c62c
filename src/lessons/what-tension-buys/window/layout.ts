/** Where the parts of the window are, on a wide page and on a phone, in drawing units. */

/** One layout. */
export interface WindowLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** The scale of the stress: its ends. */
  readonly left: number;
  readonly right: number;
  /** The first bar, how thick it is, from bar to bar; the axis under them. */
  readonly top: number;
  readonly thick: number;
  readonly step: number;
  readonly axis: number;
  /** The names: where they begin, and how far their first line is above the foot of their bar; the second line under it, or none. */
  readonly names: { readonly x: number; readonly above: number; readonly second: number };
  /** The line of the window's own dimension, over the axis; the level of the grip of the reader's tension. */
  readonly opening: number;
  readonly grip: number;
}

const WIDE: WindowLayout = {
  width: 880,
  height: 404,
  narrow: false,
  left: 320,
  right: 860,
  top: 56,
  thick: 30,
  step: 52,
  axis: 360,
  names: { x: 16, above: 18, second: 18 },
  opening: 336,
  grip: 24,
};

const NARROW: WindowLayout = {
  width: 360,
  height: 340,
  narrow: true,
  left: 14,
  right: 346,
  top: 60,
  thick: 16,
  step: 40,
  axis: 298,
  names: { x: 14, above: 22, second: 0 },
  opening: 276,
  grip: 18,
};

/** The layout for a width of screen. */
export const windowLayout = (narrow: boolean): WindowLayout => (narrow ? NARROW : WIDE);
