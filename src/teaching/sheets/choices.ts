/**
 * What a teacher chooses for a set of problem sheets, and how a link holds it: `#v=1&seed=7&lessons=a,b&variants=4`.
 * A link from outside is hostile: each part is checked by itself, what cannot be used is told and its default taken.
 * Units: counts.
 */
import type { UnitSystem } from '../../units/kinds.ts';
import { type Limits, wholeIn } from '../kit/whole.ts';

/** What goes to paper. */
export const PARTS = ['all', 'sheets', 'key'] as const;

/** The sheets, as chosen. */
export interface SheetChoices {
  /** The seed of the first sheet; each further sheet has the next number. */
  readonly seed: number;
  /** By their keys, in the order of the lessons. */
  readonly lessons: readonly string[];
  /** On each sheet. */
  readonly questions: number;
  readonly variants: number;
  readonly units: UnitSystem;
  readonly perPage: '1' | '2';
  readonly print: (typeof PARTS)[number];
}

/** What each number may be. */
export const LIMITS = {
  seed: { least: 1, most: 999_999 },
  questions: { least: 1, most: 12 },
  variants: { least: 1, most: 40 },
} as const satisfies Record<string, Limits>;

const FIRST_LESSONS = 3;

/** What stands on the page before anyone chooses; `lessons` are all there are, in their order. */
export function startingChoices(lessons: readonly string[], units: UnitSystem): SheetChoices {
  return {
    seed: 1,
    lessons: lessons.slice(0, FIRST_LESSONS),
    questions: 4,
    variants: 1,
    units,
    perPage: '1',
    print: 'all',
  };
}

/** What of a link could be used, and what could not, as it stood. */
export interface LinkedChoices {
  readonly choices: SheetChoices;
  readonly refused: readonly string[];
}

/** What one part of a link says; undefined where it says nothing that can be used. */
type Reader = (text: string, all: readonly string[]) => Partial<SheetChoices> | undefined;

const numberReader =
  (name: keyof typeof LIMITS): Reader =>
  (text) => {
    const read = /^\d+$/.test(text) ? wholeIn(text, LIMITS[name]) : undefined;
    return read?.ok ? { [name]: read.value } : undefined;
  };

const oneOf =
  <Name extends 'units' | 'perPage' | 'print'>(
    name: Name,
    options: readonly SheetChoices[Name][],
  ): Reader =>
  (text) => {
    const option = options.find((each) => each === text);
    return option && { [name]: option };
  };

const READERS: Readonly<Record<string, Reader>> = {
  seed: numberReader('seed'),
  questions: numberReader('questions'),
  variants: numberReader('variants'),
  units: oneOf('units', ['metric', 'us']),
  perPage: oneOf('perPage', ['1', '2']),
  print: oneOf('print', PARTS),
  lessons: (text, all) => {
    const named = text.split(',');
    const known = all.filter((lesson) => named.includes(lesson));
    return known.length > 0 && named.every((name) => all.includes(name))
      ? { lessons: known }
      : undefined;
  },
};

/** Reads a fragment, with or without `#`; one that is no link of ours leaves everything as it starts. Never throws. */
export function choicesIn(fragment: string, start: SheetChoices, all: readonly string[]) {
  const refused: string[] = [];
  let choices = start;
  const pairs = [...new URLSearchParams(fragment.replace(/^#/, ''))];
  const [version, ...rest] = pairs;
  if (version?.[0] !== 'v') return { choices, refused } satisfies LinkedChoices;
  if (version[1] !== '1') return { choices, refused: [`v=${version[1]}`] } satisfies LinkedChoices;
  for (const [name, text] of rest) {
    const reader = Object.hasOwn(READERS, name) ? READERS[name] : undefined;
    const found = reader?.(text, all);
    if (found) choices = { ...choices, ...found };
    else refused.push(`${name}=${text}`);
  }
  return { choices, refused } satisfies LinkedChoices;
}

/** The fragment for these choices, without `#`: all of them but how they go to paper where that is as usual. */
export function fragmentOf(choices: SheetChoices): string {
  const { seed, lessons, questions, variants, units, perPage, print } = choices;
  const always = { v: 1, seed, lessons: lessons.join(','), questions, variants, units };
  const seldom = { ...(perPage === '2' && { perPage }), ...(print !== 'all' && { print }) };
  return Object.entries({ ...always, ...seldom })
    .map(([name, value]) => `${name}=${value}`)
    .join('&');
}
