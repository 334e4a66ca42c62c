/** The parts of the reference, in the order in which they are needed. */

/** One part: its address, its name, the need that leads there, what is in it. */
export interface ReferencePart {
  readonly address: string;
  readonly title: string;
  readonly need: string;
  readonly says: string;
}

/** Every part of the reference. */
export const REFERENCE_PARTS: readonly ReferencePart[] = [
  {
    address: '/reference/glossary/',
    title: 'Glossary',
    need: 'I do not know a word',
    says: 'The words of the sawmill and of the engineer, in plain English.',
  },
  {
    address: '/reference/symbols/',
    title: 'Symbols',
    need: 'I do not know a letter',
    says: 'What each letter means, its units, and how large it usually is.',
  },
  {
    address: '/reference/formulae/',
    title: 'Formulae',
    need: 'I want the formula',
    says: 'Every relation from the handle to the setting, with its source and its limits.',
  },
  {
    address: '/reference/units/',
    title: 'Units',
    need: 'I want to type or convert a unit',
    says: 'How to type a quantity, what is refused and why, and every factor used.',
  },
  {
    address: '/reference/checks/',
    title: 'Checks',
    need: 'I doubt a number',
    says: 'Numbers published elsewhere, beside what this notebook computes.',
  },
  {
    address: '/reference/sources/',
    title: 'Sources',
    need: 'I want to know where a number comes from',
    says: 'Each source, and whether it was seen in print.',
  },
  {
    address: '/reference/cautions/',
    title: 'Cautions',
    need: 'I want to know what can hurt me',
    says: 'The dangers, how much energy is in them, and what to do first.',
  },
  {
    address: '/reference/your-data/',
    title: 'Your data',
    need: 'I want to know what is kept',
    says: 'What stays on this device, for how long, and how to take it along.',
  },
];
