/**
 * What reading a box gives: a value, or a refusal in the reader's words.
 * Units: none. Source: definition.
 */

/** Why a text was refused; stable, for tests and for callers that treat an empty box apart. */
export type RefusalCode =
  | 'empty'
  | 'tooLong'
  | 'notANumber'
  | 'thousands'
  | 'fraction'
  | 'tooLarge'
  | 'notWhole'
  | 'unknownUnit'
  | 'wrongKind';

/** A text that could not be read; `reason` says what is wrong and what would be right. */
export interface Refusal {
  readonly ok: false;
  readonly code: RefusalCode;
  readonly reason: string;
}

/** A value read from a text, or the refusal. */
export type Reading = { readonly ok: true; readonly value: number } | Refusal;

/** A refusal with its code and reason. */
export function refusal(code: RefusalCode, reason: string): Refusal {
  return { ok: false, code, reason };
}
