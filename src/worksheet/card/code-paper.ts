/**
 * Which paper prints the card's code so that a camera reads it.
 * Units: mm, modules of the code.
 * Source: common practice, no source, for the smallest module; the widths are those of the code in card.css, measured.
 */

/** The smallest papers that do: any, those from Letter on, or none. */
export type CodePaper = 'any' | 'large' | 'none';

const LEAST_MODULE = 0.4; // mm
const ON_A5 = 36.3; // mm, the code with its white border
const ON_LETTER = 49.4; // mm; A4 has more

/** For a code of so many modules to a side, its white border in them. */
export function codePaper(size: number): CodePaper {
  const needed = size * LEAST_MODULE;
  if (needed <= ON_A5) return 'any';
  return needed <= ON_LETTER ? 'large' : 'none';
}
