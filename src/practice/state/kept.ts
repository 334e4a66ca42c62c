/**
 * The benches that were worked at, kept in this browser alone: one text for each mill, the last ones. What is kept is
 * checked like anything from outside; a browser that keeps nothing is told of, by whoever asked.
 * Units: as in the bench.
 */
import type { Handling } from '../../core/bench.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { fragmentOf, type Place, readAddress } from './address.ts';
import { type Bench, freshBench, MOST, type Row, type Taken } from './bench.ts';
import { BOXES } from './boxes.ts';
import { readDisk, writeDisk } from './disk.ts';

const KEY = 'bench';

/** How many mills are kept, the last ones. */
export const MOST_BENCHES = 12;

const LONGEST_TEXT = 100; // letters of a box
const MOST_TORQUE = 1000; // N·m

type Unknown = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Unknown => typeof value === 'object' && value !== null;
const isText = (value: unknown): value is string =>
  typeof value === 'string' && value.length <= LONGEST_TEXT;
const isTorque = (value: unknown): value is number =>
  typeof value === 'number' && value > 0 && value <= MOST_TORQUE;

const listOf = <Item>(value: unknown, most: number, is: (item: unknown) => item is Item): Item[] =>
  Array.isArray(value) ? value.slice(0, most).filter(is) : [];

function isHandling(value: unknown): value is Handling {
  return (
    isObject(value) &&
    (value['clamps'] === 'quick' || value['clamps'] === 'careful') &&
    (value['hands'] === 'bare' || value['hands'] === 'gloved')
  );
}

/** A series as it was kept, under the number of its place in the list. */
function takenFrom(value: unknown, attempt: number, isLast: boolean): Taken | undefined {
  if (!isHandling(value)) return undefined;
  const kept: Unknown = { ...value };
  const torques = listOf(kept['torques'], MOST.torques, isTorque);
  const zeroedAt = kept['zeroedAt'];
  const isPlace = Number.isInteger(zeroedAt) && Number(zeroedAt) >= 0;
  const { clamps, hands } = value;
  return {
    clamps,
    hands,
    attempt,
    torques,
    ...(isPlace && Number(zeroedAt) <= torques.length && { zeroedAt: Number(zeroedAt) }),
    isReleased: kept['isReleased'] === true || !isLast,
  };
}

/** Series up to the first that cannot be read: those behind it would have other chances. */
function allTaken(value: unknown): readonly Taken[] {
  const kept = Array.isArray(value) ? value.slice(0, MOST.series) : [];
  const all = kept.map((each, at) => takenFrom(each, at, at === kept.length - 1));
  const broken = all.indexOf(undefined);
  return (broken < 0 ? all : all.slice(0, broken)) as readonly Taken[];
}

type Spot = Pick<Row, 'series' | 'place'>;

/** The place of the last look of a series, which is that after letting off where it was let off. */
const lastLook = (taken: Taken | undefined) =>
  taken ? taken.torques.length + Number(taken.isReleased) : -1;

const isSpotOf =
  (taken: readonly Taken[]) =>
  (value: unknown): value is Spot =>
    isObject(value) &&
    Number.isInteger(value['series']) &&
    Number.isInteger(value['place']) &&
    Number(value['place']) >= 0 &&
    Number(value['place']) <= lastLook(taken[Number(value['series'])]);

/** A bench out of what was kept; what cannot be used of it is left out. */
export function benchFrom(value: unknown, place: Place, system: UnitSystem): Bench {
  const fresh = freshBench(place.seed, place.level, system);
  if (!isObject(value)) return fresh;
  const taken = allTaken(value['taken']);
  const isSpot = isSpotOf(taken);
  const isRow = (row: unknown): row is Row => isSpot(row) && isText((row as Partial<Row>).dial);
  const texts = isObject(value['typed']) ? value['typed'] : {};
  const typed = BOXES.names.map((name) => [name, isText(texts[name]) ? texts[name] : '']);
  return {
    ...fresh,
    system: value['system'] === 'us' || value['system'] === 'metric' ? value['system'] : system,
    ...(isHandling(value['next']) && {
      next: { clamps: value['next'].clamps, hands: value['next'].hands },
    }),
    taken,
    rows: listOf(value['rows'], MOST.rows, isRow),
    tries: listOf(value['tries'], MOST.tries, isTorque),
    plucks: listOf(value['plucks'], MOST.plucks, isSpot),
    isMeasured: value['isMeasured'] === true,
    isLifted: value['isLifted'] === true,
    typed: Object.fromEntries(typed) as Bench['typed'],
  };
}

type Shelf = readonly (readonly [fragment: string, bench: unknown, savedAt?: unknown])[]; // ms since 1970

/** The shelf that a text holds. Never throws. */
function shelfOf(text: unknown): Shelf {
  try {
    const found: unknown = JSON.parse(String(text ?? '[]'));
    return listOf(found, MOST_BENCHES, (item): item is Shelf[number] => {
      return Array.isArray(item) && typeof item[0] === 'string';
    });
  } catch {
    return [];
  }
}

/** What lies on the shelf, the last one first. Never throws. */
function shelf(): Shelf {
  try {
    return shelfOf(localStorage.getItem(KEY));
  } catch {
    return [];
  }
}

const savedAt = (kept: Shelf): number => Number(kept[0]?.[2] ?? 0);

/** Takes the shelf from the disk where it is newer: the browser was killed before it kept its own. Never rejects. */
export async function restoreShelf(): Promise<void> {
  const found = await readDisk();
  if (typeof found !== 'string' || !(savedAt(shelfOf(found)) > savedAt(shelf()))) return;
  try {
    localStorage.setItem(KEY, found);
  } catch {
    // this browser keeps nothing, and the first change says so
  }
}

/** The mill that was worked at last. */
export const lastPlace = (): Place | undefined => readAddress(shelf()[0]?.[0] ?? '').place;

/** The bench of a mill as it was left, or a fresh one. */
export function keptBench(place: Place, system: UnitSystem): Bench {
  const fragment = fragmentOf(place);
  const [, found] = shelf().find(([kept]) => kept === fragment) ?? [];
  return benchFrom(found, place, system);
}

/** Keeps a bench as the last one; false where the browser keeps nothing. */
export function keepBench(bench: Bench): boolean {
  const fragment = fragmentOf(bench);
  const others = shelf().filter(([kept]) => kept !== fragment);
  try {
    const all = [[fragment, bench, Date.now()], ...others].slice(0, MOST_BENCHES);
    const text = JSON.stringify(all);
    localStorage.setItem(KEY, text);
    writeDisk(text);
    return true;
  } catch {
    return false;
  }
}
