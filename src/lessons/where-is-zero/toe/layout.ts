/** Where the parts of the figure `straightening` are, on a wide page and on a phone, in drawing units. */
import type { Frame } from '../../../figures/stress-plot/scales.ts';

/** One layout. */
export interface ToeLayout {
  readonly width: number;
  readonly height: number;
  /** The band from the side: its middle, the level of its clamps, the gauge length, how far it is drawn to each side. */
  readonly middle: number;
  readonly clamps: number;
  readonly gauge: number;
  readonly half: number;
  /** Height of the bar over the band, and radius of the dial. */
  readonly post: number;
  readonly dial: number;
  /** Drawing units for a metre of movement of the clamps. */
  readonly perMovement: number;
  /** The rows of travel: where their words begin, where their bars are, where their numbers end, how high each is. */
  readonly rows: Frame & { readonly words: number; readonly numbers: number; readonly row: number };
  readonly plot: Frame;
}

const WIDE: ToeLayout = {
  width: 880,
  height: 500,
  middle: 296,
  clamps: 172,
  gauge: 384,
  half: 246,
  post: 84,
  dial: 46,
  perMovement: 160_000,
  rows: { left: 706, right: 806, top: 44, bottom: 190, words: 606, numbers: 880, row: 30 },
  plot: { left: 64, right: 810, top: 268, bottom: 456 },
};

const NARROW: ToeLayout = {
  width: 360,
  height: 362,
  middle: 180,
  clamps: 86,
  gauge: 226,
  half: 172,
  post: 38,
  dial: 22,
  perMovement: 80_000,
  rows: { left: 104, right: 284, top: 114, bottom: 204, words: 0, numbers: 360, row: 18 },
  plot: { left: 50, right: 306, top: 228, bottom: 324 },
};

/** The layout for a width of screen. */
export function toeLayout(narrow: boolean): ToeLayout {
  return narrow ? NARROW : WIDE;
}

/** How many times larger than to scale the movements of the clamps are drawn, for a gauge length in m. */
export function exaggeration({ gauge, perMovement }: ToeLayout, gaugeLength: number): number {
  return perMovement / (gauge / gaugeLength);
}
