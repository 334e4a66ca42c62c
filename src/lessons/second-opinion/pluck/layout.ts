/** Where the parts of the pluck figure are, on a wide page and on a phone, in drawing units. */

/** One layout. */
export interface PluckLayout {
  readonly width: number;
  readonly height: number;
  /** The span: its left guide, units for a metre, its line at rest, how far the swing is drawn, radius of a guide. */
  readonly left: number;
  readonly perLength: number;
  readonly rest: number;
  readonly swing: number;
  readonly roller: number;
  /** Drawing units of an arrow for a pascal. */
  readonly perStress: number;
  /** The sections of both bands: left end, middle line of the first, from line to line, units for a metre. */
  readonly section: {
    readonly left: number;
    readonly y: number;
    readonly line: number;
    readonly perLength: number;
  };
  /** The arrows of the pulls: their tails, units for a newton. */
  readonly pull: { readonly left: number; readonly perForce: number };
  /** The axis of the tones: ends, its line, how high the first tone is drawn, the lines of guess and truth. */
  readonly axis: {
    readonly left: number;
    readonly right: number;
    readonly y: number;
    readonly tall: number;
    readonly guess: number;
    readonly truth: number;
  };
}

const WIDE: PluckLayout = {
  width: 880,
  height: 452,
  left: 110,
  perLength: 640,
  rest: 64,
  swing: 34,
  roller: 10,
  perStress: 70 / 240e6,
  section: { left: 110, y: 166, line: 52, perLength: 4000 },
  pull: { left: 560, perForce: 290 / 27_600 },
  axis: { left: 40, right: 850, y: 410, tall: 86, guess: 266, truth: 288 },
};

const NARROW: PluckLayout = {
  width: 360,
  height: 358,
  left: 50,
  perLength: 250,
  rest: 42,
  swing: 22,
  roller: 7,
  perStress: 18 / 240e6,
  section: { left: 8, y: 116, line: 40, perLength: 1800 },
  pull: { left: 212, perForce: 136 / 27_600 },
  axis: { left: 8, right: 352, y: 312, tall: 60, guess: 210, truth: 228 },
};

/** The layout for a width of screen. */
export const pluckLayout = (narrow: boolean): PluckLayout => (narrow ? NARROW : WIDE);
