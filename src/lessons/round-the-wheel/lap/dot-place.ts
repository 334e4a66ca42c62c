/**
 * Where a place of the lap is on the drawn mill: along the upper strand, round the idle wheel on the right, back along
 * the strand that cuts, round the driving wheel on the left.
 * Units: drawing units; shares of a lap.
 */

/** The band as it is drawn: half the distance of the wheels' centres, and a wheel's radius. */
export interface DrawnLoop {
  readonly x: number;
  readonly y: number;
  readonly half: number;
  readonly radius: number;
}

/** The point of the drawn band at a share of the lap; each strand is `strandShare` of it. */
export function dotPlace(place: number, strandShare: number, { x, y, half, radius }: DrawnLoop) {
  const isBack = place >= 0.5;
  const side = isBack ? -1 : 1;
  const along = isBack ? place - 0.5 : place;
  if (along < strandShare)
    return { x: x + side * half * ((2 * along) / strandShare - 1), y: y - side * radius };
  const angle = (Math.PI * (along - strandShare)) / (0.5 - strandShare);
  return {
    x: x + side * (half + radius * Math.sin(angle)),
    y: y - side * radius * Math.cos(angle),
  };
}
