// @vitest-environment jsdom
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
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
    <form><input /><button>Compare</button></form>
    <button type="button" data-action="another">Other numbers</button>
    <p data-part="reply" role="status"></p>
    <details><summary>The answer</summary><p data-part="because"></p></details>
  </check-yourself>`;

const box = () => only<HTMLInputElement>('input');
const reply = () => textOf('[data-part="reply"]');
/** The pull that the question names, in its own unit. */
const asked = () => Number(textOf('[data-part="ask"]').match(/carry ([\d.]+) /)?.[1]);

/** Until what judges has come and has written. */
const written = () => new Promise(setImmediate);

async function answer(text: string): Promise<string> {
  box().value = text;
  only('form').dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
  await written();
  return reply();
}

async function otherNumbers(): Promise<void> {
  only('[data-action="another"]').click();
  await written();
}

beforeAll(() => import('../../../src/live/question.ts'));

beforeEach(async () => {
  openPage(CHECK, { 'check-yourself': CheckYourself });
  await otherNumbers();
});

describe('a question', () => {
  it('stands with its drawn numbers', async () => {
    expect(textOf('[data-part="ask"]')).toMatch(/^Two strands carry [2-9]00 N\. What does/);
    const [, pull, strand] =
      textOf('[data-part="because"]').match(/^Half of (\d+) N is (.*) N\.$/) ?? [];
    expect(Number(pull)).toBe(asked());
    expect(Number(strand)).toBe(asked() / 2);
  });

  it('is asked in numbers that are round in the reader’s units', async () => {
    unitSystem.value = 'us';
    await written();
    expect(asked() % 10).toBe(0);
    expect(await answer(String(asked() / 2))).toMatch(/^Yes\./);
  });
});

describe('an answer', () => {
  it('that is right is told why, in any unit, and within rounding', async () => {
    const half = asked() / 2;
    const why = `Yes. ${textOf('[data-part="because"]')}`;
    for (const right of [`${half}`, `${half / 1000} kN`, `${half / 4.4482} lbf`, `${half * 1.02}`])
      expect(await answer(right)).toBe(why);
    expect(box().getAttribute('aria-invalid')).toBe('false');
  });

  it('that follows from a usual slip is told the slip', async () =>
    expect(await answer(String(asked()))).toBe(TEMPLATE.slips[0]?.says));

  it('that is neither is told so, and no number is given away', async () => {
    const said = await answer(String(asked() * 0.7));
    expect(said).toMatch(/^Not correct, and not one of the usual slips\./);
    expect(said).not.toMatch(/\d/);
    expect(await answer(String((asked() / 2) * 1.03))).toBe(said);
  });

  it('that cannot be read is told why, and stays in its box', async () => {
    expect(await answer('half')).toMatch(/half/);
    expect(box().value).toBe('half');
    expect(box().getAttribute('aria-invalid')).toBe('true');
    expect(await answer(`${asked() / 2} mm`)).toMatch(/is a length/);
    expect(box().getAttribute('aria-invalid')).toBe('true');
  });

  it('of a bare number that is right in the other units is told to write the unit', async () => {
    expect(await answer(String(asked() / 2 / 4.4482))).toBe(
      'That is right in lbf. A number alone is read in N here: write the unit behind it.',
    );
    unitSystem.value = 'us';
    await written();
    expect(await answer(String((asked() / 2) * 4.4482))).toBe(
      'That is right in N. A number alone is read in lbf here: write the unit behind it.',
    );
  });

  it('does not send the page anywhere', async () => {
    const submit = new Event('submit', { bubbles: true, cancelable: true });
    expect(only('form').dispatchEvent(submit)).toBe(false);
  });
});

describe('other numbers', () => {
  it('clear the answer and the reply, and shut the answer that stood open', async () => {
    await answer('half');
    only<HTMLDetailsElement>('details').open = true;
    await otherNumbers();
    expect(box().value).toBe('');
    expect(reply()).toBe('');
    expect(only<HTMLDetailsElement>('details').open).toBe(false);
    expect(document.activeElement).toBe(box());
  });

  it('are drawn, and judged by their own answer', async () => {
    const seen = new Set<number>();
    for (let question = 0; question < 12; question += 1) {
      seen.add(asked());
      expect(await answer(String(asked() / 2))).toMatch(/^Yes\./);
      await otherNumbers();
    }
    expect(seen.size).toBeGreaterThan(3);
  });
});
