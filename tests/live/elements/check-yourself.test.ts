// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from 'vitest';
import { CheckYourself } from '../../../src/live/elements/check-yourself.ts';
import { unitSystem } from '../../../src/live/unit-system.ts';
import { only, openPage, TWO_STRANDS, textOf } from '../toy-page.ts';

/** A pull drawn in steps of 100 N; on two strands each has half of it. */
const TEMPLATE = {
  id: 'half',
  ask: 'Two strands carry {pull}. What does one carry?',
  draw: { pull: { from: 200, to: 900, step: 100 } },
  fixed: { strands: TWO_STRANDS },
  answer: 'strand',
  because: 'Half of {pull:2} is {strand}.',
  slips: [{ says: 'That is the pull on both strands together.', answer: 'pull' }],
};
const CHECK = `
  <check-yourself data-template='${JSON.stringify(TEMPLATE)}' data-seed="1">
    <p data-part="ask"></p>
    <form><input /><span class="unit"></span><button>Compare</button></form>
    <button type="button" data-action="another">Other numbers</button>
    <p data-part="reply" role="status"></p>
    <details><summary>The answer</summary><p data-part="because"></p></details>
  </check-yourself>`;

const box = () => only<HTMLInputElement>('input');
const reply = () => textOf('[data-part="reply"]');
/** The pull that the question names, in its own unit. */
const asked = () => Number(textOf('[data-part="ask"]').match(/carry ([\d.]+) /)?.[1]);

function answer(text: string): string {
  box().value = text;
  only('form').dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
  return reply();
}

beforeEach(() => {
  openPage(CHECK, { 'check-yourself': CheckYourself });
});

describe('a question', () => {
  it('stands with its drawn number and the unit of its answer', () => {
    expect(textOf('[data-part="ask"]')).toMatch(/^Two strands carry [2-9]00\.0 N\. What does/);
    expect(textOf('.unit')).toBe('N');
    const [, pull, strand] =
      textOf('[data-part="because"]').match(/^Half of (\d+) N is (.*) N\.$/) ?? [];
    expect(Number(pull)).toBe(asked());
    expect(Number(strand)).toBe(asked() / 2);
  });

  it('is asked in numbers that are round in the reader’s units', () => {
    unitSystem.value = 'us';
    expect(textOf('.unit')).toBe('lbf');
    expect(asked() % 10).toBe(0);
    expect(answer(String(asked() / 2))).toMatch(/^Yes\./);
  });
});

describe('an answer', () => {
  it('that is right is told why, in any unit, and within rounding', () => {
    const half = asked() / 2;
    const why = `Yes. ${textOf('[data-part="because"]')}`;
    for (const right of [`${half}`, `${half / 1000} kN`, `${half / 4.4482} lbf`, `${half * 1.02}`])
      expect(answer(right)).toBe(why);
    expect(box().getAttribute('aria-invalid')).toBe('false');
  });

  it('that follows from a usual slip is told the slip', () =>
    expect(answer(String(asked()))).toBe(TEMPLATE.slips[0]?.says));

  it('that is neither is told so, and no number is given away', () => {
    const said = answer(String(asked() * 0.7));
    expect(said).toMatch(/^Not that, and not one of the usual slips\./);
    expect(said).not.toMatch(/\d/);
    expect(answer(String((asked() / 2) * 1.03))).toBe(said);
  });

  it('that cannot be read is told why, and stays in its box', () => {
    expect(answer('half')).toMatch(/half/);
    expect(box().value).toBe('half');
    expect(box().getAttribute('aria-invalid')).toBe('true');
    expect(answer(`${asked() / 2} mm`)).toMatch(/is a length/);
    expect(box().getAttribute('aria-invalid')).toBe('true');
  });

  it('of a bare number that is right in the other units is told to write the unit', () => {
    expect(answer(String(asked() / 2 / 4.4482))).toBe(
      'That is right in lbf. A number alone is read in N here: write the unit behind it.',
    );
    unitSystem.value = 'us';
    expect(answer(String((asked() / 2) * 4.4482))).toBe(
      'That is right in N. A number alone is read in lbf here: write the unit behind it.',
    );
  });

  it('does not send the page anywhere', () => {
    const submit = new Event('submit', { bubbles: true, cancelable: true });
    expect(only('form').dispatchEvent(submit)).toBe(false);
  });
});

describe('other numbers', () => {
  it('clear the answer and the reply, and shut the answer that stood open', () => {
    answer('half');
    only<HTMLDetailsElement>('details').open = true;
    only('[data-action="another"]').click();
    expect(box().value).toBe('');
    expect(reply()).toBe('');
    expect(only<HTMLDetailsElement>('details').open).toBe(false);
    expect(document.activeElement).toBe(box());
  });

  it('are drawn, and judged by their own answer', () => {
    const seen = new Set<number>();
    for (let question = 0; question < 12; question += 1) {
      seen.add(asked());
      expect(answer(String(asked() / 2))).toMatch(/^Yes\./);
      only('[data-action="another"]').click();
    }
    expect(seen.size).toBeGreaterThan(3);
  });
});
