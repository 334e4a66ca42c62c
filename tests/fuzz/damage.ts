/** What can happen to a text on its way: a bit turned, letters changed, lost, doubled or put in, the end cut off. */
import type { RandomSource } from '../../src/core/random.ts';

const LETTERS =
  'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_=&#%+."{}[]:,\\ \n';
const LONGEST = 6; // letters changed at once
const BITS = 7;

/** A text damaged once to three times; it may by chance come out as it was. */
export function damaged(text: string, { uniform }: RandomSource): string {
  const below = (count: number) => Math.floor(uniform() * count);
  const letter = () => LETTERS[below(LETTERS.length)] ?? '';
  const once = (whole: string): string => {
    const at = below(whole.length);
    const to = at + 1 + below(LONGEST);
    const [before, part, after] = [whole.slice(0, at), whole.slice(at, to), whole.slice(to)];
    const turned = String.fromCharCode(whole.charCodeAt(at) ^ (1 << below(BITS)));
    const kinds = [
      () => before + turned + whole.slice(at + 1),
      () => before + Array.from(part, letter).join('') + after,
      () => before + after,
      () => before + part + part + after,
      () => before + letter() + part + after,
      () => before,
    ];
    return kinds[below(kinds.length)]?.() ?? whole;
  };
  return Array.from({ length: 1 + below(3) }).reduce<string>(
    (whole) => (whole === '' ? whole : once(whole)),
    text,
  );
}
