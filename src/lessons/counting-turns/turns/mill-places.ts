/**
 * Where the parts of a mill are drawn once band and frame have given: sizes to scale, gives magnified.
 * Units: drawing units; sizes of the mills and travels in m.
 */
import type { CountingMill } from '../mill.ts';

/** Where a mill is drawn. */
export interface MillPlace {
  /** Left end of the fixed wheel's rim. */
  readonly left: number;
  /** Height of both axles. */
  readonly axis: number;
  /** Drawing units for a metre of the mill. */
  readonly scale: number;
  /** Half the depth of the beam. */
  readonly beam: number;
  /** From the movable wheel's rim to the end plate. */
  readonly gap: number;
}

/** What a mill's tensioner has done so far, m. */
export interface MillTravel {
  readonly slack: number;
  readonly slackTravel: number;
  readonly bandTravel: number;
  readonly frameTravel: number;
}

/** The mill as it is now. */
export interface CountingPlaces {
  readonly mill: CountingMill;
  readonly times: number;
  readonly scale: number;
  readonly axis: number;
  readonly beam: number;
  readonly radius: number;
  /** Centres of the fixed and the movable wheel, and of the latter as if the band had not stretched. */
  readonly fixed: number;
  readonly moved: number;
  readonly unstretched: number;
  /** How far apart the axles truly are, m. */
  readonly apart: number;
  /** Outer face of the end plate, now and before the pull. */
  readonly plate: number;
  readonly plateAtRest: number;
  readonly beamEnds: readonly [number, number];
  readonly slot: readonly [number, number];
  /** How far the strands hang through, true to scale. */
  readonly sag: number;
}

/** How thick the end plate is drawn, for half the depth of its beam. */
export function plateWidth(beam: number): number {
  return beam * 0.7;
}

/** Excess of a strand of length s hangs through by √(3·s·excess/8): flat arc, derived here. */
function hangsThrough(strand: number, excess: number): number {
  return Math.sqrt((3 * strand * Math.max(0, excess)) / 8);
}

/** The beam and its slot: to the end plate, or past the movable axle where oil pushes from inside the loop. */
function beamPlaces(place: MillPlace, mill: CountingMill, fixed: number, plate: number) {
  const { beam, scale, gap } = place;
  const axle = fixed + mill.centreDistance * scale;
  const start = fixed - (mill.wheelDiameter / 2) * scale * 0.45;
  const end = mill.cylinder ? axle + beam * 4.5 : plate;
  const slot = [axle - beam * (mill.cylinder ? 1.8 : 2.6), axle + beam * 3] as const;
  const width = mill.cylinder ? 0 : plateWidth(beam);
  return {
    beamEnds: [start, end - width] as const,
    slot: [slot[0], Math.min(slot[1], end - width - gap * 0.2)] as const,
  };
}

/** Where everything is: the model's own gives, so many times magnified. */
export function millPlaces(
  mill: CountingMill,
  place: MillPlace,
  times: number,
  { slack, slackTravel, bandTravel, frameTravel }: MillTravel,
): CountingPlaces {
  const { left, axis, beam, scale, gap } = place;
  const radius = (mill.wheelDiameter / 2) * scale;
  const fixed = left + radius;
  const rest = fixed + mill.centreDistance * scale;
  const stillSlack = slack - slackTravel;
  const unstretched = rest - stillSlack * scale;
  const plateAtRest = mill.cylinder ? rest - radius - gap : rest + radius + gap + plateWidth(beam);
  const plate = plateAtRest - frameTravel * times * scale;
  return {
    mill,
    times,
    scale,
    axis,
    beam,
    radius,
    fixed,
    unstretched,
    moved: unstretched + bandTravel * times * scale,
    apart: mill.centreDistance - stillSlack + bandTravel,
    plate,
    plateAtRest,
    ...beamPlaces(place, mill, fixed, plate),
    sag: hangsThrough(mill.centreDistance, stillSlack) * scale,
  };
}
