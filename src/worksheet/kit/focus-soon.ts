/** Puts the cursor into a box that is only about to be drawn. */
import type { BoxPath } from '../../form/paths.ts';
import { idOf } from './ids.ts';

/** Focuses the box of a path once it is there. */
export function focusSoon(path: BoxPath): void {
  requestAnimationFrame(() => document.getElementById(idOf(path))?.focus());
}
