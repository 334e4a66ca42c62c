// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { LiveInput } from '../../../src/live/elements/input.ts';
import { setInput } from '../../../src/live/store.ts';
import { AT_REST, ONE_STRAND, only, openPage, slide, TWINS, TWO_STRANDS } from '../toy-page.ts';

const CHOICES = `
  <live-input data-name="strands">
    <input type="radio" name="choice-strands" value="${ONE_STRAND}" />
    <input type="radio" name="choice-strands" value="${TWO_STRANDS}" checked />
  </live-input>`;

const radio = (value: string) => only<HTMLInputElement>(`[type="radio"][value="${value}"]`);
const open = (html: string) => openPage(html, { 'live-input': LiveInput });

describe('a row of choices', () => {
  it('sets its input, and follows it', () => {
    const store = open(CHOICES);
    radio(ONE_STRAND).checked = true;
    radio(ONE_STRAND).dispatchEvent(new Event('change', { bubbles: true }));
    expect(store.values.value['strand']).toBe(100);
    setInput(store, 'strands', TWO_STRANDS);
    expect([radio(ONE_STRAND).checked, radio(TWO_STRANDS).checked]).toEqual([false, true]);
  });

  it('takes what was chosen before the script was there', () => {
    const store = open('');
    const built = document.createElement('div');
    built.innerHTML = CHOICES;
    const [first] = built.querySelectorAll<HTMLInputElement>('input');
    if (first) first.checked = true;
    document.body.append(built);
    expect(store.values.value['strand']).toBe(100);
    expect(radio(ONE_STRAND).checked).toBe(true);
  });
});

describe('a button', () => {
  const BUTTON = '<live-input data-name="pull"><button type="button">More</button></live-input>';

  it('adds a step with each press, as far as the input goes', () => {
    const store = open(BUTTON);
    const button = only<HTMLButtonElement>('button');
    button.click();
    expect(store.values.value['pull']).toBe(110);
    setInput(store, 'pull', 995);
    button.click();
    expect(store.values.value['pull']).toBe(1000);
    expect(button.disabled).toBe(true);
    setInput(store, 'pull', 100);
    expect(button.disabled).toBe(false);
  });
});

describe('an input that is there for one choice alone', () => {
  it('comes and goes with the choice', () => {
    const shown = `<live-input id="shown" data-name="pull" data-when="strands=${ONE_STRAND}" hidden>${TWINS}</live-input>`;
    const store = open(shown);
    expect(only('#shown').hidden).toBe(true);
    setInput(store, 'strands', ONE_STRAND);
    expect(only('#shown').hidden).toBe(false);
    setInput(store, 'strands', TWO_STRANDS);
    expect(only('#shown').hidden).toBe(true);
  });

  it('or with several of them', () => {
    const shown = `<live-input id="both" data-name="pull" data-when="strands=${ONE_STRAND}|${TWO_STRANDS}" hidden>${TWINS}</live-input>`;
    const store = open(shown);
    expect(only('#both').hidden).toBe(false);
    setInput(store, 'strands', ONE_STRAND);
    expect(only('#both').hidden).toBe(false);
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
    expect(store.values.value).toEqual(AT_REST);
  });
});
