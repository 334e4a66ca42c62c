/** Keys that move a slider or a handle, alike everywhere. */

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

/** How many steps a key is worth; undefined for a key that does not move anything. */
export function stepsOfKey(key: string): number | undefined {
  return STEPS[key];
}
