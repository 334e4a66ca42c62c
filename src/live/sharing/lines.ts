/**
 * Breaks words into lines that fit a width, as the browser measures them.
 * Units: drawing units.
 */

/** How letters are set. */
export interface Lettering {
  readonly size: number;
  readonly family: string;
}

/**
 * A text in lines of at most `width`, broken between words, never between a number and its unit; a word that is longer
 * (an address) is broken too.
 */
export function lines(
  text: string,
  width: number,
  { size, family }: Lettering,
  measure = inBrowser(`${size}px "${family}"`),
): readonly string[] {
  const done: string[] = [];
  let line = '';
  for (const piece of text.split(/(?<=[ \n])/).flatMap((word) => broken(word, width, measure))) {
    if (line !== '' && measure((line + piece).trimEnd()) > width) {
      done.push(line.trimEnd());
      line = '';
    }
    line += piece;
  }
  return line.trimEnd() === '' ? done : [...done, line.trimEnd()];
}

/** A word in pieces that fit. */
function broken(word: string, width: number, measure: (text: string) => number): readonly string[] {
  if (measure(word.trimEnd()) <= width) return [word];
  let most = word.length;
  while (most > 1 && measure(word.slice(0, most)) > width) most -= 1;
  return [word.slice(0, most), ...broken(word.slice(most), width, measure)];
}

function inBrowser(font: string): (text: string) => number {
  const context = document.createElement('canvas').getContext('2d');
  if (!context) return () => 0;
  context.font = font;
  return (text) => context.measureText(text).width;
}
