/**
 * Which parts of the sheet stand open. A first visit is led through them one by one; who comes back finds them as he
 * left them. Kept in this browser alone.
 */
import type { Signal } from '@preact/signals-core';
import { isPartId, PART_IDS, type PartId } from './sheet-parts.ts';

const KEY = 'worksheet-parts'; // parts-before-paint.js opens by it

/** The parts that stand open. */
export type OpenParts = Signal<ReadonlySet<PartId>>;

function keep(parts: ReadonlySet<PartId>): void {
  try {
    localStorage.setItem(KEY, [...parts].join(' '));
  } catch {
    // nothing is remembered where storage is forbidden
  }
}

/** The parts that stand open on the form: as they were left, or opened before the script was there. */
export const openOn = (form: HTMLElement): readonly PartId[] =>
  [...form.querySelectorAll('.part:has(> details[open])')].map(({ id }) => id).filter(isPartId);

/** Opens or closes one part. */
export function setOpen(parts: OpenParts, id: PartId, isOpen: boolean): void {
  if (parts.peek().has(id) === isOpen) return;
  const others = [...parts.peek()].filter((each) => each !== id);
  parts.value = new Set(isOpen ? [...others, id] : others);
  keep(parts.value);
}

/** Opens all parts, or closes them. */
export function setAllOpen(parts: OpenParts, isOpen: boolean): void {
  parts.value = new Set(isOpen ? PART_IDS : []);
  keep(parts.value);
}
