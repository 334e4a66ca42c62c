/** The parts of the reference, in their order. */

/** One part: its address below the reference, its name, what is in it. */
export interface ReferencePart {
  readonly address: string;
  readonly title: string;
  readonly says: string;
}

/** Every part of the reference. */
export const REFERENCE_PARTS: readonly ReferencePart[] = [
  {
    address: '/reference/symbols/',
    title: 'Symbols',
    says: 'Each letter, its meaning, its units, its usual size.',
  },
  {
    address: '/reference/formulae/',
    title: 'Formulae',
    says: 'Every relation on the way from handle to setting, with its source and its limits.',
  },
  {
    address: '/reference/glossary/',
    title: 'Glossary',
    says: 'The words of the trade and of the engineer, in plain words.',
  },
  {
    address: '/reference/units/',
    title: 'Units',
    says: 'How to type a quantity, what is refused and why, and every factor used.',
  },
  {
    address: '/reference/sources/',
    title: 'Sources',
    says: 'Where each figure comes from, and whether it was seen in print.',
  },
  {
    address: '/reference/checks/',
    title: 'Checks',
    says: 'Numbers published elsewhere, held against what this notebook computes.',
  },
  {
    address: '/reference/cautions/',
    title: 'Cautions',
    says: 'What can hurt, with the energy in it, and what to do first.',
  },
];
