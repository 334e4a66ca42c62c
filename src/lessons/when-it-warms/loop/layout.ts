/**
 * Where mill, thermometers and account of growth are drawn, on a wide page and on a phone.
 * Units: drawing units; K, m in the scales.
 */
import { type MillLayout, millLayout } from '../../../figures/mill/layout.ts';
import { linearScale, type Scale } from '../../../figures/scale.ts';

/** One layout. */
export interface LoopLayout {
  readonly width: number;
  readonly height: number;
  readonly mill: MillLayout;
  /** What the band's own reach is called, where there is room for it. */
  readonly words?: { readonly x: number; readonly y: number };
  /** The thermometers: their middles, the ends of their scale, where names and values stand. */
  readonly glass: {
    readonly band: number;
    readonly frame: number;
    readonly wheels: number;
    readonly top: number;
    readonly bottom: number;
    readonly names: number;
    readonly values: number;
    readonly left: number;
  };
  /** The account: its ends, its nought, its first row, from row to row. */
  readonly account: {
    readonly left: number;
    readonly right: number;
    readonly zero: number;
    readonly y: number;
    readonly row: number;
    readonly bar: number;
    /** From a row's words down to its bar, and how far the largest growth reaches. */
    readonly drop: number;
    readonly reach: number;
    /** Line of what it does to the tension. */
    readonly sum: number;
  };
}

const TIMES = 200;

const WIDE: LoopLayout = {
  width: 880,
  height: 470,
  mill: millLayout(false, { times: TIMES, scale: 290, left: 140, axis: 104, plate: 672 }),
  words: { x: 726, y: 44 },
  glass: {
    band: 110,
    frame: 210,
    wheels: 310,
    top: 256,
    bottom: 424,
    names: 232,
    values: 462,
    left: 60,
  },
  account: {
    left: 400,
    right: 840,
    zero: 610,
    y: 262,
    row: 44,
    bar: 16,
    drop: -13,
    reach: 130,
    sum: 446,
  },
};

const NARROW: LoopLayout = {
  width: 360,
  height: 352,
  mill: millLayout(true, { times: TIMES, scale: 140, left: 66, axis: 50, plate: 312, beam: 9 }),
  glass: {
    band: 54,
    frame: 108,
    wheels: 162,
    top: 142,
    bottom: 318,
    names: 118,
    values: 348,
    left: 34,
  },
  account: {
    left: 206,
    right: 352,
    zero: 279,
    y: 128,
    row: 53,
    bar: 11,
    drop: 8,
    reach: 73,
    sum: 343,
  },
};

/** The warmths that a thermometer shows, K. */
export const GLASS = { low: -20, high: 30 } as const;

const MOST = 1.3e-3; // m of growth that the account has room for

/** The layout for a width of screen. */
export const loopLayout = (narrow: boolean): LoopLayout => (narrow ? NARROW : WIDE);

/** From a warmth to its level. */
export const glassScale = ({ glass }: LoopLayout): Scale =>
  linearScale([GLASS.low, GLASS.high], [glass.bottom, glass.top]);

/** From a growth at the wheel to its place in the account. */
export const accountScale = ({ account }: LoopLayout): Scale =>
  linearScale([0, MOST], [account.zero, account.zero + account.reach]);
