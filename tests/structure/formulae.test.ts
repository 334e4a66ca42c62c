/** Every letter of a formula is named: among the symbols, or under the formula itself. */
import { describe, expect, it } from 'vitest';
import { emptyWorksheet } from '../../src/core/worksheet/empty.ts';
import { entriesOf, lettersIn, listedLetters, unnamed, written } from './formula-letters.ts';
import { filesUnder, textOf } from './project-files.ts';

const listed = listedLetters(textOf('content/symbols.yaml'));
const entries = filesUnder('content/formulae').flatMap((path) => entriesOf(textOf(path)));

describe('the letters of the formulae', () => {
  it('are there to be looked at', () => {
    expect(entries.length).toBeGreaterThan(0);
    expect(entries.filter(({ tex }) => lettersIn(tex).length === 0)).toEqual([]);
    expect(listed.filter((letter) => letter === '')).toEqual([]);
  });

  it('are listed once each', () => expect(new Set(listed).size).toBe(listed.length));

  it.each(entries)('of "$name" are among the symbols or named under it', ({ tex, letters }) =>
    expect(unnamed(tex, letters, listed)).toEqual([]),
  );

  it.each(entries)('that "$name" names stand in it', ({ tex, letters }) => {
    const used = lettersIn(tex).flatMap((letter) => [letter.name, written(letter)]);
    expect(letters.filter((letter) => !used.includes(letter))).toEqual([]);
  });
});

describe('the reading of letters', () => {
  const read = (tex: string) => lettersIn(tex).map(written);

  it.each([
    [
      String.raw`\steel{\sigma} = E\,\frac{\steel{\Delta L}}{\hand{L_0}}`,
      [String.raw`\sigma`, 'E', String.raw`\Delta L`, 'L_0'],
    ],
    [String.raw`2\pi\tan\lambda`, [String.raw`\lambda`]],
    [
      String.raw`\mu'' \hand{M}^* \hand{M}_\text{top}^2`,
      [String.raw`\mu''`, 'M^*', String.raw`M_\text{top}`],
    ],
    [String.raw`\frac{\text{read}}{\text{true}} \mathrm{e}^{x}`, ['x']],
  ])('of %s', (tex, letters) => expect(read(tex)).toEqual(letters));

  it('finds the one that nobody names', () => {
    expect(unnamed('F = k_b x', ['x'], ['k_b'])).toEqual(['F']);
    expect(unnamed(String.raw`D_1 + T_\text{top} + T_2`, ['D'], ['T'])).toEqual(['T_2']);
  });
});

describe("what is said of Young's modulus", () => {
  it('is what the worksheet starts with', () => {
    const { youngsModulus = Number.NaN, youngsModulusHalfWidth = Number.NaN } = emptyWorksheet.band;
    const halfWidth = (100 * youngsModulusHalfWidth) / youngsModulus;
    const text = textOf('content/formulae/stretch.yaml');
    expect(text).toContain(`usual range of ± ${halfWidth.toFixed(1)} %`);
    expect(text).toContain(`standard uncertainty is ${(halfWidth / Math.sqrt(3)).toFixed(1)} %`);
  });
});
