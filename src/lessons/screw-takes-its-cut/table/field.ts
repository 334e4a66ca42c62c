/** The eight steps of the site's scale of colour: which step stands for a value. Source: definition. */

const STEPS = 8;

/** Class of the step for `value` on an even scale from `low` (step 1) to `high` (step 8); beyond the ends, the end's. */
export function fieldClass(value: number, low: number, high: number): string {
  const share = (value - low) / (high - low);
  return `field-${1 + Math.min(STEPS - 1, Math.max(0, Math.floor(share * STEPS)))}`;
}
