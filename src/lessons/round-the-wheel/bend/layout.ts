/** Where the parts of the bend figure are, on a wide page and on a phone, in drawing units. */

/** One layout. */
export interface BendLayout {
  readonly width: number;
  readonly height: number;
  /** The wheel: where the band meets it, the line of its rim, units for a metre of wheel and of the band's thickness. */
  readonly wheel: {
    readonly meets: number;
    readonly rim: number;
    readonly perLength: number;
    readonly perThickness: number;
    /** What is seen of it. */
    readonly right: number;
    readonly bottom: number;
  };
  /** The pull at the strand's end: where its arrow starts, units for a pascal. */
  readonly pull: { readonly start: number; readonly perStress: number };
  /** Lines of words over the wheel. */
  readonly said: { readonly x: number; readonly y: number; readonly anchor: 'start' | 'end' };
  /** The strip cut open: a piece of it, the line of no stress, its inner face, units for a metre and a pascal. */
  readonly section: {
    readonly left: number;
    readonly piece: number;
    readonly zero: number;
    readonly right: number;
    readonly inner: number;
    readonly perThickness: number;
    readonly perStress: number;
    readonly outerWords: number;
    readonly innerWords: number;
  };
  /** The rule of the bend in times the tension: ends, its line, its words, the lines of guess and truth. */
  readonly rule: {
    readonly left: number;
    readonly right: number;
    readonly y: number;
    readonly words: number;
    readonly guess: number;
    readonly truth: number;
  };
}

const WIDE: BendLayout = {
  width: 880,
  height: 392,
  wheel: {
    meets: 150,
    rim: 112,
    perLength: 420,
    perThickness: 26_000,
    right: 412,
    bottom: 388,
  },
  pull: { start: 100, perStress: 64 / 200e6 },
  said: { x: 20, y: 40, anchor: 'start' },
  section: {
    left: 452,
    piece: 40,
    zero: 662,
    right: 876,
    inner: 200,
    perThickness: 105_000,
    perStress: 0.218e-6,
    outerWords: 46,
    innerWords: 222,
  },
  rule: { left: 452, right: 868, y: 300, words: 272, guess: 350, truth: 374 },
};

const NARROW: BendLayout = {
  width: 360,
  height: 350,
  wheel: { meets: 92, rim: 38, perLength: 156, perThickness: 10_000, right: 206, bottom: 142 },
  pull: { start: 74, perStress: 46 / 200e6 },
  said: { x: 354, y: 16, anchor: 'end' },
  section: {
    left: 6,
    piece: 22,
    zero: 184,
    right: 358,
    inner: 228,
    perThickness: 42_000,
    perStress: 0.176e-6,
    outerWords: 153,
    innerWords: 247,
  },
  rule: { left: 8, right: 350, y: 289, words: 274, guess: 323, truth: 341 },
};

/** The layout for a width of screen. */
export const bendLayout = (narrow: boolean): BendLayout => (narrow ? NARROW : WIDE);
