/**
 * A hand-out's text: words, numbers that are printed (`{name}`), and blanks to fill: a number (`[name]`) or a word
 * (`[=word]`). Digits as in a question: `{name:3}`.
 * Units: none.
 */

/** A piece of the text. */
export type BlankPiece =
  | { readonly text: string }
  | {
      readonly name: string;
      readonly isBlank: boolean;
      readonly digits?: number;
      readonly mark?: string;
    }
  | { readonly word: string; readonly mark?: string };

const PIECES = /(\{[a-zA-Z]+(?::\d)?\}|\[[a-zA-Z]+(?::\d)?\]|\[=[^\]]+\])/;

function pieceOf(part: string): BlankPiece {
  const inside = part.slice(1, -1);
  if (!PIECES.test(part)) return { text: part };
  if (inside.startsWith('=')) return { word: inside.slice(1) };
  const [name = '', digits] = inside.split(':');
  const blank = { name, isBlank: part.startsWith('[') };
  return digits ? { ...blank, digits: Number(digits) } : blank;
}

const isBlank = (piece: BlankPiece | undefined): boolean =>
  piece !== undefined && ('word' in piece || ('isBlank' in piece && piece.isBlank));

/** A mark right behind a blank goes with it, or it could begin a line. */
const withMarks = (pieces: readonly BlankPiece[]): readonly BlankPiece[] =>
  pieces
    .map((piece, place) => {
      const next = pieces[place + 1];
      const mark = next && 'text' in next && /^[.,;:?]/.exec(next.text)?.[0];
      if (isBlank(piece) && mark) return { ...piece, mark };
      const isAfterBlank = isBlank(pieces[place - 1]);
      return 'text' in piece && isAfterBlank ? { text: piece.text.replace(/^[.,;:?]/, '') } : piece;
    })
    .filter((piece) => !('text' in piece) || piece.text !== '');

/** The text in its pieces. @throws RangeError for a bracket that belongs to none */
export function blankPieces(text: string): readonly BlankPiece[] {
  const pieces = text
    .split(PIECES)
    .filter((part) => part !== '')
    .map(pieceOf);
  const odd = pieces.find((piece) => 'text' in piece && /[{}[\]]/.test(piece.text));
  if (odd) throw new RangeError(`text must be words, {names} and [blanks] (was ${text})`);
  return withMarks(pieces);
}

/** The blanks of a text, in their order. */
export const blanksOf = (text: string): readonly Exclude<BlankPiece, { text: string }>[] =>
  blankPieces(text).flatMap((piece) => ('text' in piece || !isBlank(piece) ? [] : [piece]));
