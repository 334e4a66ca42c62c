/** Turns. */

/** Stiffness of the whole, seen at the wheel, from turns and measured stress out of the toe. */
export interface TurnsResult {
  readonly totalStiffness: number; // N/m
  readonly bandStiffness: number; // N/m, by calculation
  readonly supportStiffness: number | undefined; // N/m, frame and springs; undefined when turns cannot show it
}
