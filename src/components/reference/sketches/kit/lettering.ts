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
export const OWN_LETTERS: Readonly<Record<string, InkedLetter>> = {
  'outer-diameter': { tex: 'D_e', ink: 'plain' },
  'inner-diameter': { tex: 'D_i', ink: 'plain' },
  'free-depth': { tex: 'h_0', ink: 'plain' },
  'washer-thickness': { tex: 't', ink: 'plain' },
  push: { tex: 'F', ink: 'plain' },
  deflection: { tex: 'd', ink: 'plain' },
  'top-torque': { tex: 'M_\\text{top}', ink: 'hand' },
  'top-stress': { tex: '\\sigma_\\text{top}', ink: 'plain' },
  'set-torque': { tex: 'M^*', ink: 'hand' },
  'target-stress': { tex: '\\sigma^*', ink: 'plain' },
  'one-turn': { tex: '\\pi d_2', ink: 'plain' },
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
