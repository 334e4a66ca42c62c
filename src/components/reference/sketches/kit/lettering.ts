/**
 * What stands beside a marked part of a drawing: its name in words beside a sentence, its letter beside a formula.
 * Units: none. Source: definition; the letters are those of content/symbols.yaml.
 */

/** A label, with what is written below its line. */
export interface Lettering {
  readonly text: string;
  readonly below?: string | undefined;
  readonly isLetter: boolean;
}

/** A symbol as the content has it. */
export interface InkedLetter {
  readonly tex: string;
  readonly ink: 'hand' | 'steel' | 'plain';
}

/** Letters of parts that are no symbols; the formulae that use them explain them. */
const OWN_LETTERS: Readonly<Record<string, string>> = {
  'outer-diameter': 'D_e',
  'inner-diameter': 'D_i',
  'free-depth': 'h_0',
  'washer-thickness': 't',
  push: 'F',
  deflection: 'd',
  'top-torque': 'M_\\text{top}',
  'top-stress': '\\sigma_\\text{top}',
  'set-torque': 'M^*',
  'target-stress': '\\sigma^*',
  'one-turn': '\\pi d_2',
};

const GREEK: Readonly<Record<string, string>> = {
  Delta: 'Δ',
  alpha: 'α',
  beta: 'β',
  lambda: 'λ',
  mu: 'μ',
  pi: 'π',
  sigma: 'σ',
  theta: 'θ',
  varepsilon: 'ε',
};

function greek(name: string): string {
  const sign = GREEK[name];
  if (sign === undefined) throw new RangeError(`a letter must be Greek by name (was \\${name})`);
  return sign;
}

/** A letter in TeX as plain text with its index: `\sigma_\text{top}` is σ with "top" below. */
export function letterOf(tex: string): Lettering {
  const [line = '', below] = tex.replace(/\\text\{(\w+)\}/, '$1').split('_');
  const text = line.replace(/\\([A-Za-z]+) ?/g, (_, name: string) => greek(name));
  return { text: text.replace('^*', '*'), below, isLetter: true };
}

/** The letter of a part, if it has one. */
export function texOf(
  part: string,
  symbols: Readonly<Record<string, InkedLetter>>,
): string | undefined {
  return OWN_LETTERS[part] ?? symbols[part]?.tex;
}
