/** The code of a link: its modules as a path, and words where there can be none. */
import { encode } from 'uqr';
import { describe, expect, it } from 'vitest';
import { codeOf, pathOf } from '../../../src/live/sharing/code.ts';

/** The dark modules of a path, drawn again. */
function drawn(path: string, size: number): readonly string[] {
  const rows = Array.from({ length: size }, () => Array<string>(size).fill('.'));
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g))
    rows[Number(y)]?.fill('#', Number(x), Number(x) + Number(length));
  return rows.map((row) => row.join(''));
}

describe('the path of a code', () => {
  it('has each run of dark modules as one rectangle', () =>
    expect(
      pathOf([
        [true, true, false],
        [false, false, false],
        [true, false, true],
      ]),
    ).toBe('M0 0h2v1h-2zM0 2h1v1h-1zM2 2h1v1h-1z'));
});

describe('the code of a link', () => {
  const link = `https://example.org/worksheet/#v=2&w=${'aB3_-'.repeat(150)}`;

  it('is drawn module by module as the library has it, with a border of four', async () => {
    const code = await codeOf(link);
    if (typeof code !== 'object') throw new Error(code);
    const { data } = encode(link, { ecc: 'L', border: 4 });
    const rows = data.map((row) => row.map((isDark) => (isDark ? '#' : '.')).join(''));
    expect(drawn(code.path, code.size)).toEqual(rows);
    expect(rows.slice(0, 4).join('')).not.toContain('#');
    expect(rows[4]?.slice(4, 11)).toBe('#######');
  });

  it('is refused where a camera could not read it off the smallest card, or there is no link', async () => {
    expect(await codeOf(`${link}${'x'.repeat(700)}`)).toBe('tooLong');
    expect(await codeOf(`${link}${'x'.repeat(4000)}`)).toBe('tooLong');
    expect(await codeOf(undefined)).toBe('tooLong');
  });
});
