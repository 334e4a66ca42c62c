// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { LiveInput } from '../../../src/live/elements/input.ts';
import { setInput } from '../../../src/live/store.ts';
import { only, openPage, slide, TWINS } from '../toy-page.ts';

const CHOICES = `
  <live-input data-name="strands">
    <input type="radio" name="choice-strands" value="0" />
    <input type="radio" name="choice-strands" value="1" checked />
  </live-input>`;

const radio = (value: number) => only<HTMLInputElement>(`[type="radio"][value="${value}"]`);
const open = (html: string) => openPage(html, { 'live-input': LiveInput });

describe('a row of choices', () => {
  it('sets its input, and follows it', () => {
    const store = open(CHOICES);
    radio(0).checked = true;
    radio(0).dispatchEvent(new Event('change', { bubbles: true }));
    expect(store.values.value['strand']).toBe(100);
    setInput(store, 'strands', 1);
    expect([radio(0).checked, radio(1).checked]).toEqual([false, true]);
  });
});

describe('an input that is there for one choice alone', () => {
  it('comes and goes with the choice', () => {
    const shown = `<live-input id="shown" data-name="pull" data-when="strands=0" hidden>${TWINS}</live-input>`;
    const store = open(shown);
    expect(only('#shown').hidden).toBe(true);
    setInput(store, 'strands', 0);
    expect(only('#shown').hidden).toBe(false);
    setInput(store, 'strands', 1);
    expect(only('#shown').hidden).toBe(true);
  });
});

describe('an element that leaves the page', () => {
  it('neither sets its input any more nor follows it, and does both again when it comes back', () => {
    const store = open(`<live-input id="gone" data-name="pull">${TWINS}</live-input>`);
    const element = only('#gone');
    const slider = only<HTMLInputElement>('.slider');
    element.remove();
    slide(slider, 500);
    expect(store.values.value['pull']).toBe(100);
    setInput(store, 'pull', 300);
    expect(slider.value).toBe('500');
    document.body.append(element);
    expect(slider.value).toBe('300');
    slide(slider, 700);
    expect(store.values.value['pull']).toBe(700);
  });

  it('may name an input that the model does not have: then it stays as it was built', () => {
    const store = open(`<live-input data-name="colour">${TWINS}</live-input>`);
    slide(only<HTMLInputElement>('.slider'), 500);
    expect(store.values.value).toEqual({ pull: 100, strands: 1, strand: 50 });
  });
});
