/**
 * The bench's link: `#v=1&seed=1234&level=slipping`, and for a teacher `&lid=open`. It comes from outside: each part is
 * checked, nothing throws, and what could not be used is told.
 * Units: none.
 * Source: definition.
 */
import { type BenchLevel, benchLevels } from '../../core/bench.ts';

/** A mill by its number and level. */
export interface Place {
  readonly seed: number;
  readonly level: BenchLevel;
}

/** What an address gave: a mill, whether the lid is to be open, and the parts that could not be used, as they stood. */
export interface Address {
  readonly place: Place | undefined; // none: the address names no mill
  readonly isTeachers: boolean;
  readonly refused: readonly string[];
}

/** The mill that is there when nobody asks for another. */
export const FIRST_PLACE: Place = { seed: 1, level: 'clean' };

const LONGEST_SHOWN = 60;
const LAST_SEED = 2 ** 32 - 1;

const levelOf = (text: string | null): BenchLevel | undefined =>
  benchLevels.find((level) => level === text);

/** A seed as we write it: digits alone, no leading zero. */
export function seedOf(text: string | null): number | undefined {
  const isWritten = text !== null && /^(0|[1-9]\d{0,9})$/.test(text);
  return isWritten && Number(text) <= LAST_SEED ? Number(text) : undefined;
}

const shown = (name: string, text: string) => `${name}=${text}`.slice(0, LONGEST_SHOWN);

const NAMES = ['v', 'seed', 'level', 'lid'];

/** Reads a fragment, with or without `#`. Never throws. */
export function readAddress(fragment: string): Address {
  const bare = fragment.replace(/^#/, '');
  if (!bare.startsWith('v=')) return { place: undefined, isTeachers: false, refused: [] };
  const parts = new URLSearchParams(bare);
  const [version, seed, level, lid] = NAMES.map((name) => parts.get(name)) as (string | null)[];
  if (version !== '1')
    return { place: FIRST_PLACE, isTeachers: false, refused: [shown('v', version ?? '')] };
  const [knownSeed, knownLevel] = [seedOf(seed ?? null), levelOf(level ?? null)];
  const refused = [...parts].filter(
    ([name]) =>
      !NAMES.includes(name) ||
      (name === 'seed' && knownSeed === undefined) ||
      (name === 'level' && knownLevel === undefined) ||
      (name === 'lid' && lid !== 'open'),
  );
  return {
    place: { seed: knownSeed ?? FIRST_PLACE.seed, level: knownLevel ?? FIRST_PLACE.level },
    isTeachers: lid === 'open',
    refused: refused.map(([name, text]) => shown(name, text)),
  };
}

/** The fragment of a mill, without `#`. */
export const fragmentOf = ({ seed, level }: Place): string => `v=1&seed=${seed}&level=${level}`;

/** The whole address of a mill, as a class gets it. */
export const addressOf = (place: Place): string =>
  `${location.origin}${location.pathname}#${fragmentOf(place)}`;
