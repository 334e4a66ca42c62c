/**
 * The band's thickness in layers: the stress in each, and the step of the scale of tone that stands for it.
 * Units: Pa; a depth is 0 at the inner face and 1 at the outer.
 */
import type { State } from '../state.ts';

const LAYERS = 8;
const STEPS = 8;
const TONES = { low: -700e6, high: 960e6 }; // Pa, all that the ranges of the inputs reach

/** One layer: from which depth to which, and the class of its tone. */
export interface Layer {
  readonly from: number;
  readonly to: number;
  readonly tone: string;
}

/** The step of the scale for a stress, darker the more it pulls. */
export function toneOf(stress: number): string {
  const share = (stress - TONES.low) / (TONES.high - TONES.low);
  return `field-${1 + Math.min(STEPS - 1, Math.max(0, Math.floor(share * STEPS)))}`;
}

/** Stress at a depth. */
export function stressAtDepth({ innerStress, outerStress }: State['values'], depth: number) {
  return innerStress + depth * (outerStress - innerStress);
}

/** The layers on the wheel, from the inner face outward. */
export function layersOf(values: State['values']): readonly Layer[] {
  return Array.from({ length: LAYERS }, (_, place) => ({
    from: place / LAYERS,
    to: (place + 1) / LAYERS,
    tone: toneOf(stressAtDepth(values, (place + 0.5) / LAYERS)),
  }));
}
