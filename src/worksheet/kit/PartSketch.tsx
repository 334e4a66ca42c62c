/** The small drawing of a part: the build draws it, the live page keeps what the build drew. */
import type { JSX } from 'preact';
import type { PartId } from '../folds/sheet-parts.ts';

const drawn = new Map<string, Node>(); // by part, taken before the page comes alive

/** Takes the drawings out of the page as it was built. */
export function takeSketches(page: ParentNode): void {
  for (const place of page.querySelectorAll<HTMLElement>('[data-sketch-of]')) {
    if (place.firstChild) drawn.set(place.dataset['sketchOf'] ?? '', place.firstChild);
  }
}

/** A copy of a drawing, for a sheet of paper. */
export function SketchCopy({ id }: { readonly id: PartId }): JSX.Element {
  const fill = (place: HTMLElement | null) => {
    const drawing = drawn.get(id)?.cloneNode(true);
    if (place && drawing) place.replaceChildren(drawing);
  };
  return <div class="sketch" ref={fill} />;
}

/** The place of a drawing; empty where a part has none. */
export function PartSketch({ id }: { readonly id: PartId }): JSX.Element {
  const fill = (place: HTMLElement | null) => {
    const drawing = drawn.get(id);
    if (place && drawing && drawing.parentNode !== place) place.append(drawing);
  };
  return <div class="sketch part-sketch" data-sketch-of={id} ref={fill} />;
}
