/**
 * Where the parts of the day are drawn, on a wide page and on a phone: temperatures above, three strips of tension below, one
 * axis of time, whose night is drawn shorter.
 * Units: drawing units; hours, K and shares of the setting in the scales.
 */
import { linearScale, type Scale } from '../../../figures/scale.ts';

/** A strip of tension: where the setting is in it, where its name stands. */
export interface Strip {
  readonly setting: number;
  readonly name: number;
}

/** One layout. */
export interface DayLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  /** Names of the curves above their grips; the value stands so far below. */
  readonly names: { readonly y: number; readonly drop: number };
  /** The temperatures: upper and lower edge. */
  readonly top: number;
  readonly bottom: number;
  /** Line of the words for what is to be done. */
  readonly marks: number;
  readonly strips: { readonly screw: Strip; readonly spring: Strip; readonly oil: Strip };
  /** Drawing units for the whole tension of the setting. */
  readonly perSetting: number;
  /** Where the axis of time is, and from it to its words and from line to line. */
  readonly axis: number;
  readonly clock: number;
}

const WIDE: DayLayout = {
  width: 880,
  height: 548,
  left: 62,
  right: 740,
  names: { y: 16, drop: 19 },
  top: 48,
  bottom: 204,
  marks: 226,
  strips: {
    screw: { name: 256, setting: 312 },
    spring: { name: 412, setting: 436 },
    oil: { name: 464, setting: 486 },
  },
  perSetting: 170,
  axis: 500,
  clock: 20,
};

const NARROW: DayLayout = {
  width: 360,
  height: 352,
  left: 30,
  right: 316,
  names: { y: 12, drop: 15 },
  top: 32,
  bottom: 127,
  marks: 142,
  strips: {
    screw: { name: 159, setting: 192 },
    spring: { name: 253, setting: 269 },
    oil: { name: 290, setting: 304 },
  },
  perSetting: 100,
  axis: 315,
  clock: 15,
};

/** How far the temperatures go, K, and the shares of the tension lost or gained in the first strip. */
export const WARMEST = { low: -8, high: 37 } as const;
export const FURTHEST = { low: -0.44, high: 0.26 } as const;

const MORNING = 7;
/** When the axis begins to be drawn shorter, and its end. */
export const EVENING = 20;
const NEXT = 31;
const DAY_SHARE = 0.78;

/** The layout for a width of screen. */
export const dayLayout = (narrow: boolean): DayLayout => (narrow ? NARROW : WIDE);

/** From an hour to its place: the hours of the night are shorter. */
export function timeScale({ left, right }: DayLayout): Scale {
  const evening = left + DAY_SHARE * (right - left);
  const [day, night] = [
    linearScale([MORNING, EVENING], [left, evening]),
    linearScale([EVENING, NEXT], [evening, right]),
  ];
  return (hour) => (hour <= EVENING ? day(hour) : night(hour));
}

/** From a warmth in K to its level. */
export const warmthScale = ({ top, bottom }: DayLayout): Scale =>
  linearScale([WARMEST.low, WARMEST.high], [bottom, top]);

/** From a share of the setting, lost (below 0) or gained, to its level in a strip. */
export const changeScale = ({ perSetting }: DayLayout, { setting }: Strip): Scale =>
  linearScale([0, 1], [setting, setting - perSetting]);
