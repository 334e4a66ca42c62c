/**
 * Where the parts of the counting-turns figure stand, on a wide page and on a phone.
 * Units: drawing units.
 */
import type { State } from '../state.ts';
import type { CountingPlaces, MillPlace } from './mill-places.ts';

/** The bar of a nut's travel, and the columns of names under it. */
export interface BarPlace {
  readonly left: number;
  readonly right: number;
  readonly y: number;
  readonly height: number;
  readonly column: number;
}

/** One layout. */
export interface CountingLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  readonly mill: Omit<MillPlace, 'scale'>;
  /** Length drawn for both wheels of any mill. */
  readonly span: number;
  /** The tensioner drawn larger: outer face of the end plate, its middle line, size against the wide page. */
  readonly detail: { readonly x: number; readonly y: number; readonly size: number };
  /** The nut from outside, or the rule of pressure. */
  readonly nut: { readonly x: number; readonly y: number; readonly reach: number };
  readonly rule: { readonly left: number; readonly right: number; readonly y: number };
  readonly stress: { readonly left: number; readonly right: number; readonly y: number };
  readonly bar: BarPlace;
}

const WIDE: CountingLayout = {
  width: 880,
  height: 418,
  narrow: false,
  mill: { left: 14, axis: 82, beam: 11, gap: 34 },
  span: 400,
  detail: { x: 622, y: 86, size: 1 },
  nut: { x: 690, y: 234, reach: 56 },
  rule: { left: 626, right: 856, y: 240 },
  stress: { left: 14, right: 556, y: 252 },
  bar: { left: 10, right: 870, y: 332, height: 22, column: 215 },
};

const NARROW: CountingLayout = {
  width: 360,
  height: 340,
  narrow: true,
  mill: { left: 8, axis: 46, beam: 6, gap: 22 },
  span: 232,
  detail: { x: 42, y: 146, size: 0.6 },
  nut: { x: 302, y: 146, reach: 32 },
  rule: { left: 218, right: 340, y: 146 },
  stress: { left: 8, right: 346, y: 224 },
  bar: { left: 8, right: 352, y: 274, height: 18, column: 88 },
};

/** The layout for a width of screen. */
export function countingLayout(narrow: boolean): CountingLayout {
  return narrow ? NARROW : WIDE;
}

/** What the parts of the drawing are given. */
export interface CountingPartProps {
  readonly state: State;
  readonly layout: CountingLayout;
  readonly places: CountingPlaces;
}
