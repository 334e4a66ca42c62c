/**
 * Where the handle-to-band figure draws the mill, the list of its stages and the ribbon of work, on a wide page and on a
 * phone, and how far the chain moves the mill's parts.
 * Units: drawing units.
 */
import { type MillLayout, millLayout, wheelAt } from '../../figures/mill/layout.ts';
import type { State } from './state.ts';

/** Where the ribbon of work stands: as it is, and under it drawn out to a width that is always all of the work. */
export interface RibbonPlace {
  /** Left end, right of the rows' words, and the width of all the work. */
  readonly left: number;
  readonly width: number;
  /** Upper and lower edge of the ribbon as it is, and of the one drawn out. */
  readonly ribbon: readonly [number, number];
  readonly drawnOut: readonly [number, number];
  /** Lines of the work, of the parts' names and of the guess. */
  readonly work: number;
  readonly names: number;
  readonly guess: number;
}

/** The sheet with the mill before any turn. */
export interface TurnLayout {
  readonly width: number;
  readonly height: number;
  readonly mill: MillLayout;
  readonly ribbon: RibbonPlace;
}

const WIDE: TurnLayout = {
  width: 880,
  height: 410,
  mill: millLayout(false, { times: 35 }),
  ribbon: {
    left: 150,
    width: 722,
    ribbon: [304, 320],
    drawnOut: [340, 356],
    work: 317,
    names: 376,
    guess: 400,
  },
};

const NARROW: TurnLayout = {
  width: 360,
  height: 320,
  mill: millLayout(true, { times: 40, end: { x: 302, y: 190, reach: 42 } }),
  ribbon: {
    left: 110,
    width: 248,
    ribbon: [254, 264],
    drawnOut: [272, 281],
    work: 264,
    names: 297,
    guess: 315,
  },
};

/** The layout for a width of screen. */
export function turnLayout(narrow: boolean): TurnLayout {
  return narrow ? NARROW : WIDE;
}

/** The mill as it stands now. */
export interface TurnedMill {
  /** Its layout, with the end plate and what hangs on it where the frame has given way to. */
  readonly mill: MillLayout;
  /** Where the movable wheel's centre stands. */
  readonly wheel: number;
}

/** The mill after the turns: the core's own travel, times the printed magnification. */
export function turnedMill({ values }: State, { mill }: TurnLayout): TurnedMill {
  const give = values.frameTravel * mill.scale * mill.times;
  return {
    mill: { ...mill, plate: mill.plate - give, handle: mill.handle - give },
    wheel: wheelAt(mill, values.wheelTravel),
  };
}
