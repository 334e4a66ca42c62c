// @vitest-environment jsdom
import { expect, it, vi } from 'vitest';
import { CheckYourself } from '../../src/live/elements/check-yourself.ts';
import { bindLateElements } from '../../src/live/late-elements.ts';
import { openPage } from './toy-page.ts';

it('keeps an answer that comes before its script, and has it judged once that is there', async () => {
  openPage('<check-yourself data-template="{}"><form><input /></form></check-yourself>', {});
  const form = document.querySelector('form') as HTMLFormElement;
  vi.spyOn(customElements, 'define').mockImplementation(() => {}); // another test may have defined it
  const again = vi.spyOn(form, 'requestSubmit').mockImplementation(() => {});
  bindLateElements();
  const taken = new Event('submit', { bubbles: true, cancelable: true });
  taken.preventDefault();
  form.dispatchEvent(taken);
  expect(again, 'one that was taken already').not.toHaveBeenCalled();
  const early = new Event('submit', { bubbles: true, cancelable: true });
  form.dispatchEvent(early);
  expect(early.defaultPrevented).toBe(true);
  await vi.waitFor(() => expect(again).toHaveBeenCalledOnce());
  expect(customElements.define).toHaveBeenCalledWith('check-yourself', CheckYourself);
  vi.restoreAllMocks();
});

it('holds nothing any more once its script is there: each form answers by itself', () => {
  const form = document.querySelector('form') as HTMLFormElement;
  const again = vi.spyOn(form, 'requestSubmit');
  const later = new Event('submit', { bubbles: true, cancelable: true });
  form.dispatchEvent(later);
  expect(later.defaultPrevented).toBe(false);
  expect(again).not.toHaveBeenCalled();
});
