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
  /** The line of the column titles, the levels of the three bands at rest, the line of the guide spacing. */
  readonly titles: number;
  readonly rests: readonly [number, number, number];
  readonly spacing: number;
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
  height: 506,
  narrow: false,
  perMovement: 3000,
  perLength: 330,
  middle: 190,
  section: 436,
  board: { left: 550, right: 862, hump: 90, perThickness: 1000 },
  roller: 6,
  words: 32,
  tail: 36,
  titles: 16,
  rests: [62, 136, 232],
  spacing: 294,
  bars: { left: 126, perMovement: 33_000, key: 330, top: 342, thick: 13, step: 17, group: 42 },
  marks: { guess: 478, truth: 498 },
};

const NARROW: PushLayout = {
  width: 360,
  height: 354,
  narrow: true,
  perMovement: 2000,
  perLength: 150,
  middle: 84,
  section: 204,
  board: { left: 268, right: 352, hump: 30, perThickness: 500 },
  roller: 4,
  words: 21,
  tail: 23,
  titles: 0,
  rests: [22, 72, 138],
  spacing: 186,
  bars: { left: 74, perMovement: 12_500, key: 216, top: 224, thick: 10, step: 13, group: 31 },
  marks: { guess: 330, truth: 348 },
};

/** The layout for a width of screen. */
export const pushLayout = (narrow: boolean): PushLayout => (narrow ? NARROW : WIDE);
