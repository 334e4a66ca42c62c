// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { bindUnitSwitch, unitSystem } from '../../src/live/unit-system.ts';
import { only, startAfresh } from './toy-page.ts';

const SWITCH = `
  <input type="radio" name="units" value="metric" checked />
  <input type="radio" name="units" value="us" />`;

const side = (value: string) => only<HTMLInputElement>(`[value="${value}"]`);

function choose(value: string): void {
  side(value).checked = true;
  side(value).dispatchEvent(new Event('change', { bubbles: true }));
}

beforeEach(() => {
  startAfresh();
  document.body.innerHTML = SWITCH;
});
afterEach(() => {
  vi.restoreAllMocks();
  localStorage.clear();
  delete document.documentElement.dataset['units'];
});

describe('the switch of units', () => {
  it('shows the system that the page has opened in', () => {
    unitSystem.value = 'us';
    bindUnitSwitch();
    expect(side('us').checked).toBe(true);
    expect(side('metric').checked).toBe(false);
  });

  it('tells the signal, the page and the next visit', () => {
    bindUnitSwitch();
    choose('us');
    expect(unitSystem.value).toBe('us');
    expect(document.documentElement.dataset['units']).toBe('us');
    expect(localStorage.getItem('units')).toBe('us');
    choose('metric');
    expect(unitSystem.value).toBe('metric');
    expect(localStorage.getItem('units')).toBe('metric');
  });

  it('remembers nothing that was not chosen', () => {
    bindUnitSwitch();
    expect(localStorage.length).toBe(0);
  });

  it('still switches where nothing can be kept', () => {
    vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    bindUnitSwitch();
    choose('us');
    expect(unitSystem.value).toBe('us');
    expect(document.documentElement.dataset['units']).toBe('us');
  });
});
