/** Puts the cursor into a box that is only about to be drawn. */
import type { BoxPath } from '../../form/paths.ts';
import { idOf } from './ids.ts';

/** Focuses the box of a path once it is there, with its text chosen, so that typing takes its place. */
export function focusSoon(path: BoxPath): void {
  requestAnimationFrame(() => {
    const box = document.getElementById(idOf(path));
    box?.focus();
    if (box instanceof HTMLInputElement) box.select();
  });
}
