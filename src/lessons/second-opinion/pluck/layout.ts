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
  /** The band's section: left end, middle line, units for a metre. */
  readonly section: { readonly left: number; readonly y: number; readonly perLength: number };
  /** The arrow of the whole pull: its tail, its level, units for a newton. */
  readonly pull: { readonly left: number; readonly y: number; readonly perForce: number };
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
  height: 430,
  left: 110,
  perLength: 640,
  rest: 64,
  swing: 34,
  roller: 10,
  perStress: 70 / 240e6,
  section: { left: 110, y: 176, perLength: 4200 },
  pull: { left: 600, y: 176, perForce: 240 / 27_600 },
  axis: { left: 40, right: 850, y: 384, tall: 92, guess: 254, truth: 276 },
};

const NARROW: PluckLayout = {
  width: 360,
  height: 330,
  left: 50,
  perLength: 250,
  rest: 42,
  swing: 22,
  roller: 7,
  perStress: 34 / 240e6,
  section: { left: 8, y: 124, perLength: 1900 },
  pull: { left: 222, y: 124, perForce: 126 / 27_600 },
  axis: { left: 8, right: 352, y: 292, tall: 68, guess: 190, truth: 208 },
};

/** The layout for a width of screen. */
export const pluckLayout = (narrow: boolean): PluckLayout => (narrow ? NARROW : WIDE);
