/**
 * Where the parts of the rig stand, on a wide page and on a phone. Band, bar, clamps and dial share one scale.
 * Units: drawing units; sizes of the rig in m.
 */

/** One layout. */
export interface RigLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** Drawing units for a metre of the rig. */
  readonly scale: number;
  /** Inner edge of the left clamp, middle of the band. */
  readonly left: number;
  readonly band: number;
  /** Where the gauge length is lettered. */
  readonly dimension: number;
  /** The two bars below: left end, right end of their scale, height of each on the sheet. */
  readonly bars: {
    readonly left: number;
    readonly right: number;
    readonly rows: readonly [number, number];
  };
}

/** Sizes of an invented gauge, m; movements are drawn so many times larger. */
export const GAUGE = {
  bar: 0.012,
  clamp: { width: 0.014, height: 0.044 },
  dial: 0.0285, // radius
  plunger: { reach: 0.03, height: 0.005 },
  times: 100,
} as const;

const layouts: Readonly<Record<'wide' | 'phone', RigLayout>> = {
  wide: {
    width: 880,
    height: 300,
    narrow: false,
    scale: 1800,
    left: 60,
    band: 96,
    dimension: 190,
    bars: { left: 190, right: 640, rows: [238, 274] },
  },
  phone: {
    width: 360,
    height: 240,
    narrow: true,
    scale: 720,
    left: 22,
    band: 42,
    dimension: 98,
    bars: { left: 8, right: 352, rows: [152, 208] },
  },
};

/** The layout for a width of screen. */
export function rigLayout(narrow: boolean): RigLayout {
  return narrow ? layouts.phone : layouts.wide;
}
