/**
 * What the plot of stress against note is drawn on: its scales, and the curve of the reader's span on them.
 * Units: SI in the state; drawing units otherwise.
 */
import { pitchFromStress, stressFromPitch } from '../../../core/span.ts';
import { linearScale } from '../../../figures/scale.ts';
import { NOTE_RANGE } from '../note-range.ts';
import type { State } from '../state.ts';
import { stripOf } from '../strip.ts';
import type { ListenLayout } from './layout.ts';

/** Both ends of the axis of notes, Hz, and of that of stresses, Pa. */
export const NOTES = [0, 420] as const;
export const STRESSES = [0, 250e6] as const;
const POINTS = 40;

/** The scales of the plot. */
export function notePlot({ left, right, top, bottom }: ListenLayout) {
  return { x: linearScale(NOTES, [left, right]), y: linearScale(STRESSES, [bottom, top]) };
}

/** Whether the stress that the note tells is above the plot. */
export const isAbove = ({ values }: State): boolean => values.noteStress > STRESSES[1];

/** Where the curve of the reader's span has a stress, across the drawing. */
export function acrossAt({ values }: State, layout: ListenLayout, stress: number): number {
  return notePlot(layout).x(pitchFromStress({ ...stripOf(values.band, values.span), stress }));
}

/** The curve from the lowest note of the span to where it leaves the plot. */
export function curve({ values }: State, layout: ListenLayout): string {
  const { x, y } = notePlot(layout);
  const strip = stripOf(values.band, values.span);
  const lowest = Math.max(values.lowestNote, NOTE_RANGE.low);
  const highest = Math.min(NOTES[1], pitchFromStress({ ...strip, stress: STRESSES[1] }));
  const points = Array.from({ length: POINTS + 1 }, (_, place) => {
    const frequency = lowest + ((highest - lowest) * place) / POINTS;
    return `${x(frequency)} ${y(stressFromPitch({ ...strip, frequency }))}`;
  });
  return `M${points.join('L')}`;
}
