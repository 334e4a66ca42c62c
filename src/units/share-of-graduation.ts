/**
 * How finely a dial is read, told as a share of its graduation: `half`, `a quarter`, `1/2`, `½ mark`.
 * Units: as typed.
 * Source: definition; a bare fraction is taken for a share, for nobody reads a dial to half a millimeter.
 */
import { leadingNumber } from './reading/parse-number.ts';
import { tidyText } from './reading/tidy-text.ts';

const NAMES: Readonly<Record<string, number>> = {
  half: 2,
  'a third': 3,
  'a quarter': 4,
  'a fifth': 5,
  'a tenth': 10,
};
const OF_WHAT = '(?: (?:of )?(?:an? |the |one )?(?:mark|graduation|division|line)s?)?';
const SHARE = new RegExp(
  `^(?:(?:an? |one )?(half|third|quarter|fifth|tenth)|1 ?/ ?([2-9]|10))${OF_WHAT}$`,
  'i',
);

/** The share of the graduation that is typed, by its name and in the graduation’s own unit; undefined where none is. */
export function shareOfGraduation(
  typed: string,
  graduation: string,
): { readonly name: string; readonly text: string } | undefined {
  const [, word = '', bottom] = SHARE.exec(tidyText(typed)) ?? [];
  const one = leadingNumber(tidyText(graduation));
  const named = Object.entries(NAMES).find(([name, parts]) =>
    bottom ? parts === Number(bottom) : word !== '' && name.endsWith(word.toLowerCase()),
  );
  const parts = named?.[1] ?? Number(bottom);
  if (!one.ok || !(parts > 0)) return undefined;
  const length = Number((one.value / parts).toPrecision(6));
  return { name: named?.[0] ?? `1/${parts}`, text: `${length} ${one.rest}`.trim() };
}
