/**
 * Where the two mills of the pair, the bars of their travel and the scale of stress are drawn, on a wide page and on a
 * phone; the mills share one scale, and so do the bars.
 * Units: drawing units.
 */
import type { BarPlace } from '../turns/layout.ts';
import type { MillPlace } from '../turns/mill-places.ts';

/** One mill of the pair. */
export interface MillLayout {
  readonly mill: MillPlace;
  /** Its name with what is between nut and frame, and how far its nut travels. */
  readonly name: { readonly x: number; readonly y: number };
  readonly travels: { readonly x: number; readonly y: number; readonly anchor: 'start' | 'end' };
  /** Height of the dimension from axle to axle, where there is room for it. */
  readonly apart?: number;
  readonly bar: BarPlace;
}

/** One layout. */
export interface PairLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  readonly stiff: MillLayout;
  readonly soft: MillLayout;
  /** The arm that turns both nuts: its middle and how far its grip is from there. */
  readonly dial: { readonly x: number; readonly y: number; readonly reach: number };
  /** Drawing units for a metre of travel. */
  readonly perTravel: number;
  /** The scale of stress: its ends, its line, where the mills' names begin. */
  readonly stress: {
    readonly names: number;
    readonly left: number;
    readonly right: number;
    readonly y: number;
  };
}

const wideMill = { scale: 112, beam: 8, gap: 30, axis: 118 } as const;
const narrowMill = { scale: 72, beam: 6, gap: 17 } as const;

const WIDE: PairLayout = {
  width: 880,
  height: 400,
  narrow: false,
  stiff: {
    mill: { ...wideMill, left: 14 },
    name: { x: 14, y: 18 },
    travels: { x: 14, y: 38, anchor: 'start' },
    apart: 182,
    bar: { left: 14, right: 300, y: 228, height: 20, column: 98 },
  },
  soft: {
    mill: { ...wideMill, left: 400 },
    name: { x: 400, y: 18 },
    travels: { x: 400, y: 38, anchor: 'start' },
    apart: 214,
    bar: { left: 400, right: 870, y: 228, height: 20, column: 120 },
  },
  dial: { x: 334, y: 118, reach: 38 },
  perTravel: 46_000,
  stress: { names: 14, left: 210, right: 850, y: 374 },
};

const NARROW: PairLayout = {
  width: 360,
  height: 374,
  narrow: true,
  stiff: {
    mill: { ...narrowMill, left: 8, axis: 28 },
    name: { x: 184, y: 20 },
    travels: { x: 184, y: 40, anchor: 'start' },
    bar: { left: 8, right: 262, y: 57, height: 14, column: 88 },
  },
  soft: {
    mill: { ...narrowMill, left: 8, axis: 183 },
    name: { x: 8, y: 136 },
    travels: { x: 352, y: 136, anchor: 'end' },
    bar: { left: 8, right: 352, y: 230, height: 14, column: 88 },
  },
  dial: { x: 314, y: 85, reach: 25 },
  perTravel: 33_600,
  stress: { names: 8, left: 150, right: 338, y: 352 },
};

/** The layout for a width of screen. */
export function pairLayout(narrow: boolean): PairLayout {
  return narrow ? NARROW : WIDE;
}
