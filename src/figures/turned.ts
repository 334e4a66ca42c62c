/** Where the end of an arm stands after so many turns, clockwise from the top. Units: drawing units; turns. */

/** A point of a drawing. */
interface Point {
  readonly x: number;
  readonly y: number;
}

/** The end of an arm of length `reach` about `centre`. */
export function turned({ x, y }: Point, reach: number, turns: number): Point {
  const angle = 2 * Math.PI * turns;
  return { x: x + reach * Math.sin(angle), y: y - reach * Math.cos(angle) };
}
