/**
 * A short number that any change of a text changes, for comparing what different machines draw.
 * Source: 64-bit FNV-1a hash of G. Fowler, L. C. Noll and K.-P. Vo, from memory; over UTF-16 units.
 */
import type { DrawnSheet } from '../../../src/teaching/sheets/drawn.ts';

const START = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;

/** The hash of a text, as hexadecimal digits. */
export function digestOf(text: string): string {
  let hash = START;
  for (let place = 0; place < text.length; place += 1) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(text.charCodeAt(place))) * PRIME);
  }
  return hash.toString(16).padStart(16, '0');
}

/** All that sheets and key say, line by line. */
export const textOfSheets = (sheets: readonly DrawnSheet[]): string =>
  sheets
    .flatMap(({ seed, questions }) =>
      questions.map(({ ask, answer, unit, because, slips }) =>
        [seed, ask, answer, unit, because, ...slips.map((slip) => slip.answer)].join('\n'),
      ),
    )
    .join('\n');
