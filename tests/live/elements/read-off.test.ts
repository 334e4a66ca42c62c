// @vitest-environment jsdom
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { ReadOffFigure } from '../../../src/live/elements/read-off.ts';
import { type PageStore, setInput } from '../../../src/live/store.ts';
import { numberAt } from '../../../src/models/define-model.ts';
import { putOnPage, type ReadOff } from '../../../src/models/on-page.ts';
import { ONE_STRAND, only, openPage, textOf, toy } from '../toy-page.ts';

const READ_OFF = `
  <read-off data-input="pull" data-with="pull strands">
    <form><input /><button>Compare</button>
      <button type="button" data-action="answer">Show the answer</button>
      <button type="button" data-action="next">Another</button></form>
    <p class="reply"></p>
  </read-off>`;

/** The toy's strand, read in pounds. */
const readOff: ReadOff = {
  kind: 'force',
  unitsOf: () => 'us',
  replyTo: (values, typed) =>
    Math.abs(numberAt(values, 'strand') - typed) < 1 ? 'Yes.' : 'Not so.',
  because: (values) => `It is ${numberAt(values, 'strand')} N.`,
};

const box = () => only<HTMLInputElement>('input');
const reply = () => textOf('.reply');
const written = () => new Promise(setImmediate);

async function answer(text: string): Promise<string> {
  box().value = text;
  only('form').dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
  await written();
  await written();
  return reply();
}

let store: PageStore;
beforeEach(() => {
  putOnPage({ model: toy, figures: {}, readOff: async () => readOff });
  store = openPage(READ_OFF, { 'read-off': ReadOffFigure });
});

afterAll(() => putOnPage());

describe('a figure that is read', () => {
  it('gets the lesson’s reply, a bare number in the figure’s own unit', async () => {
    await import('../../../src/units/reading/parse-quantity.ts');
    expect(await answer('50 N')).toBe('Yes.');
    expect(await answer('11.24')).toBe('Yes.');
    expect(await answer('50')).toBe('Not so.');
    expect(box().getAttribute('aria-invalid')).toBe('false');
  });

  it('says what is wrong with a text that is no quantity, and keeps it', async () => {
    expect(await answer('much')).not.toMatch(/Yes|Not so|^$/);
    expect([box().value, box().getAttribute('aria-invalid')]).toEqual(['much', 'true']);
  });

  it('shows the answer when it is asked for', async () => {
    only('[data-action="answer"]').click();
    await written();
    expect(reply()).toBe('It is 50 N.');
  });

  it('goes on to the next picture, after the last to the first', () => {
    const next = () => {
      only('[data-action="next"]').click();
      return store.values.peek()['pull'];
    };
    expect(next()).toBe(110);
    setInput(store, 'pull', 1000);
    expect(next()).toBe(0);
  });

  it('takes answer and reply away with what they were for', async () => {
    await answer('50 N');
    setInput(store, 'strands', ONE_STRAND);
    expect([reply(), box().value]).toEqual(['', '']);
  });
});
