/**
 * A hand-out's text: words, numbers that are printed (`{name}`), and blanks to fill: a number (`[name]`) or a word
 * (`[=word]`). Digits as in a question: `{name:3}`.
 * Units: none.
 */

/** A piece of the text. */
export type BlankPiece =
  | { readonly text: string }
  | { readonly name: string; readonly isBlank: boolean; readonly digits?: number }
  | { readonly word: string };

const PIECES = /(\{[a-zA-Z]+(?::\d)?\}|\[[a-zA-Z]+(?::\d)?\]|\[=[^\]]+\])/;

function pieceOf(part: string): BlankPiece {
  const inside = part.slice(1, -1);
  if (!PIECES.test(part)) return { text: part };
  if (inside.startsWith('=')) return { word: inside.slice(1) };
  const [name = '', digits] = inside.split(':');
  const isBlank = part.startsWith('[');
  return digits ? { name, isBlank, digits: Number(digits) } : { name, isBlank };
}

/** The text in its pieces. @throws RangeError for a bracket that belongs to none */
export function blankPieces(text: string): readonly BlankPiece[] {
  const pieces = text
    .split(PIECES)
    .filter((part) => part !== '')
    .map(pieceOf);
  const odd = pieces.find((piece) => 'text' in piece && /[{}[\]]/.test(piece.text));
  if (odd) throw new RangeError(`text must be words, {names} and [blanks] (was ${text})`);
  return pieces;
}

/** The blanks of a text, in their order. */
export const blanksOf = (text: string): readonly Exclude<BlankPiece, { text: string }>[] =>
  blankPieces(text).flatMap((piece) =>
    'word' in piece || ('isBlank' in piece && piece.isBlank) ? [piece] : [],
  );
