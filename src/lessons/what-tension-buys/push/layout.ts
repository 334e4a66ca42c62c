/** Where the parts of the push figure are, on a wide page and on a phone, in drawing units. */

/** One layout. */
export interface PushLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** Units for a metre of movement and of the section, which is true to scale; and for a metre along the span. */
  readonly perMovement: number;
  readonly perLength: number;
  /** Mid-span seen from the front; the middle of the body seen end-on. */
  readonly middle: number;
  readonly section: number;
  /** The board: its ends, its knot's place and half of the hump's length, units for a metre of its thickness. */
  readonly board: {
    readonly left: number;
    readonly right: number;
    readonly hump: number;
    readonly perThickness: number;
  };
  /** Radius of a guide's roller; from the band at rest to the words under it, and to the tail of the push. */
  readonly roller: number;
  readonly words: number;
  readonly tail: number;
  /** The line of the column titles, the line of the guide spacing, the levels of the three bands at rest. */
  readonly titles: number;
  readonly spacing: number;
  readonly rests: readonly [number, number, number];
  /** Where bow and twist stand one on the other, between section and board: left end and width. */
  readonly column: { readonly left: number; readonly width: number };
  /** The bars: their left end, units for a metre of movement, the key's line, the first bar, how thick, from one to the next and from group to group. */
  readonly bars: {
    readonly left: number;
    readonly perMovement: number;
    readonly key: number;
    readonly top: number;
    readonly thick: number;
    readonly step: number;
    readonly group: number;
  };
  /** The lines of guess and truth. */
  readonly marks: { readonly guess: number; readonly truth: number };
}

const WIDE: PushLayout = {
  width: 880,
  height: 540,
  narrow: false,
  perMovement: 4000,
  perLength: 4000 / 12,
  middle: 186,
  section: 430,
  column: { left: 528, width: 10 },
  board: { left: 556, right: 864, hump: 90, perThickness: 1000 },
  roller: 6,
  words: 32,
  tail: 36,
  titles: 16,
  spacing: 48,
  rests: [88, 172, 284],
  bars: { left: 126, perMovement: 33_000, key: 352, top: 366, thick: 14, step: 19, group: 42 },
  marks: { guess: 512, truth: 532 },
};

const NARROW: PushLayout = {
  width: 360,
  height: 370,
  narrow: true,
  perMovement: 2000,
  perLength: 2000 / 13,
  middle: 84,
  section: 202,
  column: { left: 251, width: 7 },
  board: { left: 270, right: 354, hump: 30, perThickness: 500 },
  roller: 4,
  words: 23,
  tail: 25,
  titles: 0,
  spacing: 24,
  rests: [52, 101, 168],
  bars: { left: 74, perMovement: 12_500, key: 212, top: 221, thick: 11, step: 15, group: 36 },
  marks: { guess: 344, truth: 363 },
};

/** The layout for a width of screen. */
export const pushLayout = (narrow: boolean): PushLayout => (narrow ? NARROW : WIDE);
