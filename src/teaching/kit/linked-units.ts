/**
 * Links to pages for teachers carry the units in which they were made: `#units=us`, or `units` among what else a link
 * holds. What is no name of a system is as if it were not there.
 */
import { unitSystem } from '../../live/unit-system.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { unitsIn, withUnits } from './link-parts.ts';

/** Shows the page in other units; the reader's own choice is not touched. */
function show(page: Document, units: UnitSystem): void {
  page.documentElement.dataset['units'] = units;
  unitSystem.value = units;
  for (const radio of page.querySelectorAll<HTMLInputElement>('input[name="units"]'))
    radio.checked = radio.value === units;
}

/** Follows a link that is opened while the page is there, and keeps the units of the address in step with the switch. */
export function followLinkedUnits(page: Document): void {
  addEventListener('hashchange', () => {
    const units = unitsIn(location.hash);
    if (units) show(page, units);
  });
  unitSystem.subscribe((units) => {
    if (!unitsIn(location.hash) || location.hash.startsWith('#v=')) return; // the sheets keep theirs themselves
    history.replaceState(null, '', `#${withUnits(location.hash, units)}`);
  });
}
