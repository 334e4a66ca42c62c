// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bindHandles } from '../../../src/live/elements/drag.ts';
import { only, press, startAfresh } from '../toy-page.ts';

const handle = (id: string, more: string) =>
  `<g class="handle" id="${id}" tabindex="0" data-input="${id}" ${more}><circle r="22" id="${id}-reach"/></g>`;
const SHEET = `
  <svg>
    ${handle('pull', 'data-drag="x" data-per-unit="2"')}
    ${handle('height', 'data-drag="y" data-per-unit="-1"')}
    ${handle('turns', 'data-drag="turn" data-per-unit="10" data-centre-x="100" data-centre-y="100"')}
    <rect id="paper"/>
  </svg>`;

let values: Record<string, number>;
let steps: [string, number][];
let held: number[];
let release: AbortController;

/** A pointer event; without a layout a unit of the drawing is a pixel of the screen. */
function point(selector: string, type: string, x: number, y: number, button = 0): PointerEvent {
  const place = { clientX: x, clientY: y, button, pointerId: 7 };
  const event = new PointerEvent(type, { ...place, bubbles: true, cancelable: true });
  only<Element>(selector).dispatchEvent(event);
  return event;
}

beforeEach(() => {
  startAfresh();
  document.body.innerHTML = SHEET;
  values = { pull: 100, height: 50, turns: 0 };
  steps = [];
  held = [];
  release = new AbortController();
  for (const node of document.querySelectorAll('svg, .handle'))
    Object.assign(node, {
      getScreenCTM: () => null,
      setPointerCapture: (id: number) => held.push(id),
    });
  const target = {
    read: (input: string) => values[input] ?? Number.NaN,
    write: (input: string, value: number) => {
      values[input] = value;
    },
    step: (input: string, count: number) => void steps.push([input, count]),
  };
  bindHandles(document.body, target, release.signal);
});
afterEach(() => release.abort());

describe('a handle under a pointer', () => {
  it('follows along its way, at what a unit of the drawing is worth', () => {
    point('#pull-reach', 'pointerdown', 10, 10);
    point('#pull', 'pointermove', 25, 90);
    expect(values['pull']).toBe(130);
    point('#pull', 'pointermove', 20, 0);
    expect(values['pull']).toBe(120);
    point('#height', 'pointerup', 20, 0);
    point('#height', 'pointerdown', 0, 0);
    point('#height', 'pointermove', 500, 12);
    expect(values['height']).toBe(38);
  });

  it('turns about its centre: a quarter is π/2, and past half a turn it goes on', () => {
    point('#turns', 'pointerdown', 200, 100);
    point('#turns', 'pointermove', 100, 200);
    expect(values['turns']).toBeCloseTo(5 * Math.PI, 9);
    point('#turns', 'pointermove', 0, 99);
    point('#turns', 'pointermove', 100, 0);
    expect(values['turns']).toBeCloseTo(15 * Math.PI, 9);
  });

  it('is moved on by what the pointer moved, also where the value stopped at its range', () => {
    point('#pull', 'pointerdown', 10, 10);
    point('#pull', 'pointermove', 1010, 10);
    values['pull'] = 1000; // as a range would have it
    point('#pull', 'pointermove', 460, 10);
    expect(values['pull']).toBe(1000);
    point('#pull', 'pointermove', 410, 10);
    expect(values['pull']).toBe(900);
  });

  it('has the focus, and keeps the pointer', () => {
    const down = point('#pull-reach', 'pointerdown', 10, 10);
    expect(document.activeElement?.id).toBe('pull');
    expect(held).toEqual([7]);
    expect(down.defaultPrevented).toBe(true);
  });

  it.each(['pointerup', 'pointercancel'])('rests after %s', (type) => {
    point('#pull', 'pointerdown', 10, 10);
    point('#pull', type, 10, 10);
    point('#pull', 'pointermove', 90, 10);
    expect(values['pull']).toBe(100);
  });

  it('rests under a second button, and beside a handle the page is left to scroll', () => {
    point('#pull', 'pointerdown', 10, 10, 2);
    point('#pull', 'pointermove', 90, 10);
    expect(point('#paper', 'pointerdown', 10, 10).defaultPrevented).toBe(false);
    point('#paper', 'pointermove', 90, 10);
    expect(values).toEqual({ pull: 100, height: 50, turns: 0 });
  });

  it('rests once its figure is let go', () => {
    release.abort();
    point('#pull', 'pointerdown', 10, 10);
    point('#pull', 'pointermove', 90, 10);
    expect(values['pull']).toBe(100);
  });
});

describe('a handle under the keys', () => {
  it('steps, and scrolls nothing', () => {
    expect(press(only<Element>('#pull'), 'ArrowRight')).toBe(false);
    expect(press(only<Element>('#height'), 'PageDown')).toBe(false);
    expect(steps).toEqual([
      ['pull', 1],
      ['height', -10],
    ]);
  });

  it('leaves other keys, and keys elsewhere, to the page', () => {
    expect(press(only<Element>('#pull'), 'Tab')).toBe(true);
    expect(press(only<Element>('#paper'), 'ArrowRight')).toBe(true);
    expect(steps).toEqual([]);
  });
});
