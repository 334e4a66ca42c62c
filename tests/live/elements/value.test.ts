// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { LiveEquation } from '../../../src/live/elements/equation.ts';
import { LiveValue } from '../../../src/live/elements/value.ts';
import { setInput } from '../../../src/live/store.ts';
import { ONE_STRAND, only, openPage, textOf } from '../toy-page.ts';

const quantity = '<span class="q-metric">–</span><span class="q-us">–</span>';

describe('a number in the text', () => {
  it('stands in both unit systems, and follows: half of 300 N is 150, or 33.7 lbf', () => {
    const store = openPage(`<live-value data-name="strand">${quantity}</live-value>`, {
      'live-value': LiveValue,
    });
    expect(textOf('.q-metric')).toBe('50.0 N');
    setInput(store, 'pull', 300);
    expect(textOf('.q-metric')).toBe('150 N');
    expect(textOf('.q-us')).toBe('33.7 lbf');
  });

  it('has as many digits as the text asks for', () => {
    openPage(`<live-value data-name="strand" data-digits="2">${quantity}</live-value>`, {
      'live-value': LiveValue,
    });
    expect(textOf('.q-us')).toBe('11 lbf');
  });

  it('is not written again where it stays the same', () => {
    const store = openPage(`<live-value data-name="pull">${quantity}</live-value>`, {
      'live-value': LiveValue,
    });
    const text = only('.q-metric').firstChild;
    setInput(store, 'strands', ONE_STRAND);
    expect(only('.q-metric').firstChild).toBe(text);
  });
});

describe('an equation', () => {
  it('follows in its visible half and in its MathML half alike', () => {
    const half = (id: string) =>
      `<span id="${id}"><i class="q-metric" data-live="pull"></i><i class="q-us" data-live="strand"></i></span>`;
    const store = openPage(`<live-equation>${half('seen')}${half('spoken')}</live-equation>`, {
      'live-equation': LiveEquation,
    });
    setInput(store, 'pull', 300);
    for (const id of ['#seen', '#spoken']) expect(textOf(id)).toBe('300 N33.7 lbf');
  });
});
