/** Where the parts of the note figure are, on a wide page and on a phone, in drawing units. */

/** One layout. */
export interface ListenLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** The lines of words under the axis: of the axis itself, of the note if it were the second tone. */
  readonly words: number;
  readonly ghost: number;
}

const WIDE: ListenLayout = {
  width: 880,
  height: 392,
  left: 64,
  right: 850,
  top: 30,
  bottom: 320,
  words: 376,
  ghost: 376,
};

const NARROW: ListenLayout = {
  width: 360,
  height: 312,
  left: 54,
  right: 350,
  top: 26,
  bottom: 226,
  words: 278,
  ghost: 300,
};

/** The layout for a width of screen. */
export const listenLayout = (narrow: boolean): ListenLayout => (narrow ? NARROW : WIDE);
