/** The letters of a formula's TeX, and the entries of the content's files of formulae. */

const INKS = /\\(?:hand|steel)\{((?:[^{}]|\{[^{}]*\})*)\}/g;
const WORDS = /(?<!_)\\text\{[^}]*\}|\\mathrm\{[^}]*\}/g;
const GREEK =
  /^\\(?:var)?(?:alpha|beta|gamma|delta|epsilon|eta|theta|kappa|lambda|mu|nu|rho|sigma|tau|phi|omega)$/;
const INDEX = String.raw`_(\\text\{[^}]*\}|\{[^}]*\}|\w)`;
const LETTER = new RegExp(
  String.raw`(\\Delta\s*)?(\\[a-zA-Z]+|[a-zA-Z])(?:${INDEX})?('+|\^\*)?(?:${INDEX})?`,
  'g',
);

/** One letter: with what belongs to its name, and its index or nothing. */
export interface Letter {
  readonly name: string;
  readonly index: string;
}

/** Every letter of a piece of TeX; the number π, functions and words are none. */
export function lettersIn(tex: string): readonly Letter[] {
  const plain = tex.replaceAll(INKS, ' $1').replaceAll(WORDS, ' ');
  return [...plain.matchAll(LETTER)]
    .filter(([, , sign = '']) => sign.length === 1 || GREEK.test(sign))
    .map(([, change, sign = '', before, mark = '', after]) => ({
      name: `${change ? '\\Delta ' : ''}${sign}${mark}`,
      index: before ?? after ?? '',
    }));
}

/** A letter as one text. */
export const written = ({ name, index }: Letter): string =>
  index === '' ? name : `${name}_${index}`;

/** The letters that are neither listed nor the formula's own. A word as index, or any index of an own letter, explains itself. */
export function unnamed(
  tex: string,
  own: readonly string[],
  listed: readonly string[],
): readonly string[] {
  const isNamed = (letter: Letter) =>
    [...own, ...listed].includes(written(letter)) ||
    own.includes(letter.name) ||
    (letter.index.startsWith('\\text') && listed.includes(letter.name));
  return [
    ...new Set(
      lettersIn(tex)
        .filter((each) => !isNamed(each))
        .map(written),
    ),
  ];
}

/** One formula as its file has it. */
export interface FormulaEntry {
  readonly name: string;
  readonly tex: string; // with what stands beside it
  readonly letters: readonly string[];
}

const QUOTED = "'((?:[^']|'')*)'";
const quoted = (text: string, before: string, after = ''): readonly string[] =>
  [...text.matchAll(new RegExp(`^ {4,6}${before}${QUOTED}${after}`, 'gm'))].map(([, found = '']) =>
    found.replaceAll("''", "'"),
  );

/** A letter of TeX of ours as one text: the first in it. */
const firstOf = (tex: string): string => lettersIn(tex).map(written)[0] ?? '';

/** The formulae of one file. */
export const entriesOf = (yaml: string): readonly FormulaEntry[] =>
  yaml
    .split(/^ {2}- name: /m)
    .slice(1)
    .map((text) => ({
      name: text.slice(0, text.indexOf('\n')),
      tex: [...quoted(text, 'tex: '), ...quoted(text, '- ')].join(' ; '),
      letters: quoted(text, '', ': ').map(firstOf),
    }));

/** The letters of the list of symbols. */
export const listedLetters = (yaml: string): readonly string[] =>
  [...yaml.matchAll(new RegExp(`tex: ${QUOTED}`, 'g'))].map(([, tex = '']) =>
    firstOf(tex.replaceAll("''", "'")),
  );
