/**
 * Where the parts of the counting-turns figure stand, on a wide page and on a phone, and where the gives have put them.
 * Units: drawing units; sizes of the mills in m.
 */

import type { CountingMill } from '../mill.ts';
import { MILLS } from '../mills.worked.ts';
import type { State } from '../state.ts';

/** One layout. */
export interface CountingLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** The mill: left end of the fixed wheel's rim, length drawn for both wheels, height of their centres. */
  readonly left: number;
  readonly span: number;
  readonly axis: number;
  /** The frame: height of its beam, half the thickness of beam and arms, way from rim to arm. */
  readonly beam: number;
  readonly half: number;
  readonly gap: number;
  /** The tensioner drawn larger: outer face of the frame's arm, its middle line, size against the wide page. */
  readonly detail: { readonly x: number; readonly y: number; readonly size: number };
  /** The nut from outside, or the rule of pressure. */
  readonly nut: { readonly x: number; readonly y: number; readonly reach: number };
  readonly rule: { readonly left: number; readonly right: number; readonly y: number };
  readonly stress: { readonly left: number; readonly right: number; readonly y: number };
  /** Where the travel went: the bar, and the columns of names under it. */
  readonly bar: {
    readonly left: number;
    readonly right: number;
    readonly y: number;
    readonly height: number;
    readonly column: number;
  };
}

const WIDE: CountingLayout = {
  width: 880,
  height: 470,
  narrow: false,
  left: 26,
  span: 400,
  axis: 142,
  beam: 34,
  half: 10,
  gap: 62,
  detail: { x: 640, y: 96, size: 1 },
  nut: { x: 690, y: 258, reach: 58 },
  rule: { left: 626, right: 856, y: 258 },
  stress: { left: 26, right: 556, y: 306 },
  bar: { left: 10, right: 870, y: 380, height: 24, column: 215 },
};

const NARROW: CountingLayout = {
  width: 360,
  height: 388,
  narrow: true,
  left: 8,
  span: 232,
  axis: 86,
  beam: 16,
  half: 6,
  gap: 36,
  detail: { x: 42, y: 184, size: 0.6 },
  nut: { x: 304, y: 184, reach: 34 },
  rule: { left: 218, right: 340, y: 192 },
  stress: { left: 8, right: 346, y: 262 },
  bar: { left: 8, right: 352, y: 316, height: 18, column: 88 },
};

/** The layout for a width of screen. */
export function countingLayout(narrow: boolean): CountingLayout {
  return narrow ? NARROW : WIDE;
}

/** How many times larger than the mill the stretch of the band and the bow of the frame are drawn, for each mill. */
const TIMES = { stiffFrame: 60, discWashers: 60, softSpring: 120, oil: 80 } as const;

/** The mill as it stands now, in drawing units. */
export interface CountingPlaces {
  readonly mill: CountingMill;
  readonly times: number;
  /** Drawing units for a metre of the mill. */
  readonly scale: number;
  readonly radius: number;
  /** Centres of the fixed and the movable wheel, and of the latter as if the band had not stretched. */
  readonly fixed: number;
  readonly moved: number;
  readonly unstretched: number;
  /** Middle lines of the frame's arms at the beam, how far their ends lean in, how far the beam bows up. */
  readonly arms: readonly [number, number];
  readonly lean: number;
  readonly bow: number;
  /** How far the strands hang through, true to scale. */
  readonly sag: number;
}

/** Excess of a strand of length s hangs through by √(3·s·excess/8): flat arc, derived here. */
function hangsThrough(strand: number, excess: number): number {
  return Math.sqrt((3 * strand * Math.max(0, excess)) / 8);
}

/** Where everything stands: the model's own gives, times the printed magnification. */
export function countingPlaces({ values }: State, layout: CountingLayout): CountingPlaces {
  const { tensioner, slack, slackTravel, bandTravel, frameTravel } = values;
  const mill: CountingMill = MILLS[tensioner];
  const times = TIMES[tensioner];
  const { centreDistance, wheelDiameter } = mill;
  const scale = layout.span / (centreDistance + wheelDiameter);
  const radius = (wheelDiameter / 2) * scale;
  const lean = (frameTravel * times * scale) / 2;
  const left = layout.left + radius;
  const rest = left + centreDistance * scale;
  const right = mill.cylinder ? rest - radius - layout.gap / 2 : rest + radius + layout.gap;
  const stillSlack = slack - slackTravel;
  const unstretched = left + lean + (centreDistance - stillSlack) * scale;
  return {
    mill,
    times,
    scale,
    radius,
    fixed: left + lean,
    unstretched,
    moved: unstretched + bandTravel * times * scale,
    arms: [left, right],
    lean,
    // A beam bent by a couple at each end lies on an arc: its rise is a quarter of end slope times length.
    bow: ((lean / (layout.axis - layout.beam)) * (right - left)) / 4,
    sag: hangsThrough(centreDistance, stillSlack) * scale,
  };
}

/** What the parts of the drawing are given. */
export interface CountingPartProps {
  readonly state: State;
  readonly layout: CountingLayout;
  readonly places: CountingPlaces;
}
