/**
 * A day at the mill, from the cold start to the next one: how warm band, frame and wheels are at its hours, each curve in
 * proportion to the one number that the reader drags.
 * Units: SI; hours counted from midnight, beyond 24 in the night after.
 * Source: invented. The band follows the cut within minutes, heavy parts follow sun and frost by hours: common practice,
 * no source.
 */
import type { Warmth } from '../warmth.ts';

/** What the reader drags: the band while it cuts, the frame in the sun, the wheels when work ends; K above the setting. */
export interface Dragged {
  readonly bandWarm: number;
  readonly frameWarm: number;
  readonly wheelsWarm: number;
}

/** Share of the dragged warmth that a part has at an hour, and the frost that it has in any case, K. */
interface Hour {
  readonly at: number;
  readonly band: number;
  readonly frame: number;
  readonly wheels: number;
  readonly frost?: Warmth;
}

const FROST: Warmth = { band: -6, frame: -2, wheels: -4 };

const HOURS: readonly Hour[] = [
  { at: 7, band: 0, frame: 0, wheels: 0 },
  { at: 8, band: 1, frame: 0, wheels: 0 },
  { at: 12, band: 1, frame: 0.6, wheels: 0.6 },
  { at: 13, band: 0.3, frame: 0.85, wheels: 0.6 },
  { at: 13.5, band: 1, frame: 1, wheels: 0.65 },
  { at: 14.5, band: 1, frame: 1, wheels: 0.75 },
  { at: 17, band: 1, frame: 0.9, wheels: 1 },
  { at: 18.5, band: 0.1, frame: 0.7, wheels: 0.6 },
  { at: 28, band: 0, frame: 0, wheels: 0, frost: FROST },
  { at: 31, band: 0, frame: 0, wheels: 0 },
];

/** The hours that the lesson names. */
export const NAMED = { start: 7, first: 8, lunch: 12, dusk: 18.5, stop: 17, frost: 28 } as const;

/** Where each curve is dragged: where its share is 1. */
export const GRIPS = { band: 10, frame: 14, wheels: 17 } as const;

function warmthOf({ band, frame, wheels, frost }: Hour, dragged: Dragged): Warmth {
  return {
    band: band * dragged.bandWarm + (frost?.band ?? 0),
    frame: frame * dragged.frameWarm + (frost?.frame ?? 0),
    wheels: wheels * dragged.wheelsWarm + (frost?.wheels ?? 0),
  };
}

/** The whole day: each hour with how warm the parts are; between two of them it goes straight. */
export const day = (dragged: Dragged) =>
  HOURS.map((hour) => ({ at: hour.at, warmth: warmthOf(hour, dragged) }));

/** How warm the parts are at one of the hours that the lesson names. @throws RangeError for another */
export function warmthAt(name: keyof typeof NAMED, dragged: Dragged): Warmth {
  const hour = HOURS.find(({ at }) => at === NAMED[name]);
  if (!hour) throw new RangeError(`${name} must be an hour of the day`);
  return warmthOf(hour, dragged);
}
