/**
 * Typed text brought to plain ASCII where several characters mean the same thing.
 * Units: none. Source: the Unicode Standard, for the characters named; the choice is common practice, no source.
 */

function spelledFraction(_match: string, digit: string, fraction: string): string {
  const plain = fraction.normalize('NFKC').replace('⁄', '/');
  return digit === '' ? plain : `${digit} ${plain}`;
}

/** The text with one sort of space, minus, slash, inch mark and foot mark, `20½` as `20 1/2`, and no space at the ends. */
export function tidyText(text: string): string {
  return text
    .replace(/[\s\u200b\u2060]+/g, ' ')
    .replace(/[\u2010-\u2015\u2212\ufe63\uff0d]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[’‘′ʹ]/g, "'")
    .replace(/[”“„″]|''/g, '"')
    .replace(/(\d?) ?([¼½¾⅐-⅞])/g, spelledFraction)
    .trim();
}
