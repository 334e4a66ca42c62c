/**
 * Where the handle-to-band figure draws the mill, the list of its stages and the ribbon of work, on a wide page and on a
 * phone, and how far the chain moves the mill's parts.
 * Units: drawing units.
 */
import { type MillLayout, millLayout, wheelAt } from '../../figures/mill/layout.ts';
import type { State } from './state.ts';

/** Where the ribbon of work stands. */
export interface RibbonPlace {
  /** Left end of the ribbon, right of its rows' labels, and the width of all the work. */
  readonly left: number;
  readonly width: number;
  /** Where the work goes in, where it has spread, where it ends. */
  readonly top: number;
  readonly spread: number;
  readonly foot: number;
  /** Lines of the parts' names and of the guess. */
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
  ribbon: { left: 150, width: 722, top: 308, spread: 344, foot: 358, names: 377, guess: 401 },
};

const NARROW: TurnLayout = {
  width: 360,
  height: 320,
  mill: millLayout(true, { times: 40, end: { x: 302, y: 190, reach: 42 } }),
  ribbon: { left: 106, width: 250, top: 255, spread: 272, foot: 280, names: 296, guess: 315 },
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
