/** Where the parts of the life figure are, on a wide page and on a phone, in drawing units. */

/** One layout. */
export interface LifeLayout {
  readonly width: number;
  readonly height: number;
  /** The rule of the change: ends, its line, the line of its words. */
  readonly rule: {
    readonly left: number;
    readonly right: number;
    readonly y: number;
    readonly words: number;
  };
  /** The bars: where life is as today, units for a doubling, the first row, from row to row, how thick. */
  readonly bars: {
    readonly today: number;
    readonly perDoubling: number;
    readonly first: number;
    readonly row: number;
    readonly thick: number;
  };
  /** The words of a row: where they start, and how far over its bar. */
  readonly words: { readonly x: number; readonly over: number; readonly lines: 1 | 2 };
  /** The scale of life: its line, how far under it the words are. */
  readonly scale: { readonly y: number; readonly words: number };
}

const WIDE: LifeLayout = {
  width: 880,
  height: 322,
  rule: { left: 420, right: 680, y: 50, words: 20 },
  bars: { today: 550, perDoubling: 88, first: 104, row: 54, thick: 28 },
  words: { x: 4, over: 8, lines: 2 },
  scale: { y: 258, words: 46 },
};

const NARROW: LifeLayout = {
  width: 360,
  height: 292,
  rule: { left: 60, right: 300, y: 38, words: 12 },
  bars: { today: 180, perDoubling: 41, first: 100, row: 50, thick: 20 },
  words: { x: 6, over: 7, lines: 1 },
  scale: { y: 236, words: 42 },
};

/** The layout for a width of screen. */
export const lifeLayout = (narrow: boolean): LifeLayout => (narrow ? NARROW : WIDE);
