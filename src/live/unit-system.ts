/**
 * The site's unit system: one signal, kept in step with the switch in the page head and remembered.
 * (public/before-paint.js has set the class before the first paint.)
 */
import { signal } from '@preact/signals-core';
import type { UnitSystem } from '../units/kinds.ts';

const KEY = 'units';

/** The system in which quantities are read and written now. */
export const unitSystem = signal<UnitSystem>(
  document.documentElement.dataset['units'] === 'us' ? 'us' : 'metric',
);

function remember(system: UnitSystem): void {
  try {
    localStorage.setItem(KEY, system);
  } catch {
    // A browser that keeps nothing still switches; it only forgets.
  }
}

/** Binds the switch's radio buttons to the signal. */
export function bindUnitSwitch(): void {
  for (const radio of document.querySelectorAll<HTMLInputElement>('input[name="units"]')) {
    radio.checked = radio.value === unitSystem.value;
    radio.addEventListener('change', () => {
      const system = radio.value === 'us' ? 'us' : 'metric';
      document.documentElement.dataset['units'] = system;
      unitSystem.value = system;
      remember(system);
    });
  }
}
