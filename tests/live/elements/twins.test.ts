// @vitest-environment jsdom
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { LiveInput } from '../../../src/live/elements/input.ts';
import { reading } from '../../../src/live/reading.ts';
import { type PageStore, setInput } from '../../../src/live/store.ts';
import { unitSystem } from '../../../src/live/unit-system.ts';
import { only, openPage, press, slide, TEN_POUNDS, TWINS, textOf, type } from '../toy-page.ts';

let store: PageStore;
const box = () => only<HTMLInputElement>('.box');
const slider = () => only<HTMLInputElement>('.slider');
const refusal = () => only('.refusal');
const pull = () => store.values.value['pull'];

beforeAll(async () => {
  await reading.fetch();
});

beforeEach(() => {
  const html = `<live-input data-name="pull">${TWINS}</live-input>`;
  store = openPage(html, { 'live-input': LiveInput });
});

describe('a slider and a box', () => {
  it('keep in step: the box follows the slider, by whole steps', () => {
    slide(slider(), 234);
    expect(pull()).toBe(230);
    expect(box().value).toBe('230');
    expect(slider().getAttribute('aria-valuetext')?.replace(/\s/g, ' ')).toBe('230 N');
  });

  it('keep in step: the slider follows the box, to the number as it was typed', () => {
    type(box(), '234.5');
    expect(pull()).toBe(234.5);
    expect(slider().value).toBe('234.5');
  });

  it('follow what sets the value elsewhere: a handle, a link, a new start', () => {
    setInput(store, 'pull', 640);
    expect([box().value, slider().value]).toEqual(['640', '640']);
  });

  it('take another unit behind the number: 20 lbf are 88.964 N', () => {
    type(box(), '20 lbf');
    expect(pull()).toBeCloseTo(2 * TEN_POUNDS, 9);
    expect(box().value).toBe('20 lbf');
    box().blur();
    expect(box().value).toBe('89'); // a box for a force has tenths of a newton
  });

  it('show the reader’s units, on a scale of their own', () => {
    type(box(), '200');
    box().blur();
    unitSystem.value = 'us';
    expect(pull()).toBe(200);
    expect(box().value).toBe('44.96');
    expect(Number(slider().max)).toBeCloseTo(224.809, 3);
    expect(Number(slider().value)).toBeCloseTo(44.962, 3);
    slide(slider(), 52);
    expect(pull()).toBeCloseTo(5 * TEN_POUNDS, 9);
  });
});

describe('what was typed before the script was there', () => {
  /** A page whose box was typed into before it came alive. */
  function early(text: string, moved = '100'): void {
    store = openPage('', { 'live-input': LiveInput });
    const built = document.createElement('div');
    built.innerHTML = `<live-input data-name="pull">${TWINS}</live-input>`;
    const first = built.querySelector<HTMLInputElement>('.box');
    const second = built.querySelector<HTMLInputElement>('.slider');
    if (first && second) [first.value, second.value] = [text, moved];
    document.body.append(built);
  }

  it('is taken', () => {
    early('300');
    expect(pull()).toBe(300);
    expect(slider().value).toBe('300');
  });

  it('is taken where the slider was moved, by whole steps', () => {
    early('100', '234');
    expect(pull()).toBe(230);
    expect(box().value).toBe('230');
  });

  it('is that of the box where a browser brings both back', () => {
    early('300', '299');
    expect(pull()).toBe(300);
  });

  it('is kept and refused where it is wrong', () => {
    early('twelve');
    expect(pull()).toBe(100);
    expect(box().value).toBe('twelve');
    expect(refusal().hidden).toBe(false);
  });
});

describe('a refusal', () => {
  it.each([
    ['twelve', /twelve/],
    ['12 mm', /is a length/],
    ['', /./],
  ])('of “%s” stands beside the box, which keeps what was typed', (text, reason) => {
    type(box(), text);
    expect(refusal().hidden).toBe(false);
    expect(refusal().textContent).toMatch(reason);
    expect(box().getAttribute('aria-invalid')).toBe('true');
    expect(pull()).toBe(100);
    box().blur();
    expect(box().value).toBe(text);
    expect(refusal().hidden).toBe(false);
  });

  it.each(['-1', '1000.1', '1 kN 1'])('of %s leaves the value at its last good state', (text) => {
    type(box(), '300');
    type(box(), text);
    expect(pull()).toBe(300);
    expect(slider().value).toBe('300');
    expect(refusal().hidden).toBe(false);
  });

  it('of a number out of range says the range, in the reader’s units', () => {
    type(box(), '2000');
    expect(textOf('.refusal')).toBe('The figure goes from 0 N to 1000 N. It stays where it was.');
    unitSystem.value = 'us';
    type(box(), '2000');
    expect(textOf('.refusal')).toMatch(/^The figure goes from 0 lbf to 225 lbf\./);
  });

  it('takes both ends of the range', () => {
    for (const end of ['0', '1000']) {
      type(box(), end);
      expect(refusal().hidden).toBe(true);
      expect(pull()).toBe(Number(end));
    }
  });

  it('takes an end as it is named, though that is rounded up: 225 lbf for 224.81', () => {
    unitSystem.value = 'us';
    for (const named of ['225', '225 lbf']) {
      type(box(), '100');
      type(box(), named);
      expect(refusal().hidden, named).toBe(true);
      expect(pull()).toBe(1000);
    }
  });

  it('stands for what is further beyond an end than its name', () => {
    unitSystem.value = 'us';
    type(box(), '100');
    type(box(), '225.01');
    expect(refusal().hidden).toBe(false);
    expect(pull()).toBeCloseTo(10 * TEN_POUNDS, 9);
  });

  it('goes with the next good number, and with a move of the slider', () => {
    type(box(), 'twelve');
    type(box(), '12');
    expect(refusal().hidden).toBe(true);
    expect(refusal().textContent).toBe('');
    expect(box().getAttribute('aria-invalid')).toBe('false');
    type(box(), 'twelve');
    box().blur();
    slide(slider(), 500);
    expect(refusal().hidden).toBe(true);
    expect(box().value).toBe('500');
  });
});

describe('what is being typed', () => {
  it('is never written over while the box has the focus', () => {
    type(box(), '1e2');
    expect(box().value).toBe('1e2');
    setInput(store, 'pull', 640);
    expect(box().value).toBe('1e2');
    expect(slider().value).toBe('640');
  });

  it('becomes the number that it was taken for when the focus leaves', () => {
    type(box(), '250.00');
    box().blur();
    expect(box().value).toBe('250');
  });
});

describe('the keys of a slider', () => {
  it.each([
    ['ArrowRight', 110],
    ['ArrowDown', 90],
    ['PageUp', 200],
    ['PageDown', 0],
    ['Home', 0],
    ['End', 1000],
  ])('%s leads to %s, and scrolls nothing', (key, to) => {
    expect(press(slider(), key)).toBe(false);
    expect(pull()).toBe(to);
  });

  it('are left to the page where they move nothing', () => {
    expect(press(slider(), 'Tab')).toBe(true);
    expect(pull()).toBe(100);
  });
});
