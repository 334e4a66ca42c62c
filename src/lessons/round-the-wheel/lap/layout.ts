/** Where the parts of the lap figure are, on a wide page and on a phone, in drawing units. */

/** One layout. */
export interface LapLayout {
  readonly width: number;
  readonly height: number;
  /** The mill: middle between its wheels, units for a metre, radius of the moving dot. */
  readonly loop: {
    readonly x: number;
    readonly y: number;
    readonly perLength: number;
    readonly dot: number;
  };
  /** The plot: its frame, the line of its words, of the grip, and of the names of its pieces. */
  readonly plot: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
    readonly words: number;
    readonly grip: number;
    readonly pieces: number;
  };
}

const WIDE: LapLayout = {
  width: 880,
  height: 380,
  loop: { x: 172, y: 190, perLength: 132, dot: 7 },
  plot: { left: 408, right: 870, top: 44, bottom: 300, words: 22, grip: 324, pieces: 366 },
};

const NARROW: LapLayout = {
  width: 360,
  height: 342,
  loop: { x: 180, y: 68, perLength: 112, dot: 6 },
  plot: { left: 40, right: 352, top: 164, bottom: 284, words: 150, grip: 303, pieces: 336 },
};

/** The layout for a width of screen. */
export const lapLayout = (narrow: boolean): LapLayout => (narrow ? NARROW : WIDE);
