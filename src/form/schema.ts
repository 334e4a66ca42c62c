/**
 * What a worksheet from outside must look like: a link, a file, or the browser's own store, which others can write
 * too. Loaded only when one of them is there.
 * Units: none.
 * Source: definition.
 */
import * as z from 'zod/mini';
import { DOCUMENT_FORMAT, documentOf, textsOf, type WorksheetDocument } from './document.ts';
import { LISTS } from './fields.ts';
import { patternOf, rowsOnTheWay } from './paths.ts';
import { mayStand, typedFrom } from './typed.ts';
import { fromVersion1 } from './versions/version-1.ts';

/** Why something is not a worksheet that this page can open. */
export type DocumentRefusal = 'notOurs' | 'newerVersion' | 'damaged';

/** Boxes renamed since version 2 was first written: the old pattern, and today's. */
export type Renamed = Readonly<Record<string, string>>;
const RENAMED: Renamed = {};

const MOST = 1 + Math.max(...Object.values(LISTS).map(({ most }) => most)); // rows, with their heads

const typed = z.string().check(z.maxLength(200));
const version2 = z.object({
  version: z.literal(2),
  units: z.record(z.string().check(z.maxLength(30)), z.string().check(z.maxLength(20))),
  typed: z.record(z.string().check(z.maxLength(80)), typed),
  tables: z.record(
    z.string().check(z.maxLength(80)),
    z.array(z.array(typed).check(z.maxLength(20))).check(z.maxLength(MOST)),
  ),
});

const head = z.object({ format: z.literal(DOCUMENT_FORMAT), version: z.number() });

/** A path by today's name, its row numbers kept. */
function renamedTo(path: string, renamed: Renamed): string {
  const numbers = rowsOnTheWay(path).map(([, row]) => row);
  const pattern = patternOf(path);
  const now = Object.hasOwn(renamed, pattern) ? renamed[pattern] : undefined;
  return now === undefined ? path : now.replaceAll('*', () => numbers.shift() ?? '');
}

function fromVersion2(value: unknown, renamed: Renamed): WorksheetDocument | undefined {
  const { data } = version2.safeParse(value);
  if (!data) return undefined;
  const texts = textsOf(data).map(([path, text]) => [renamedTo(path, renamed), text] as const);
  const isOurs = texts.every(([path, text]) => mayStand(path, text));
  return isOurs ? documentOf(typedFrom(texts), data.units) : undefined;
}

/** The worksheet in `value` as it is written today, or why there is none. Never throws. */
export function readDocument(
  value: unknown,
  renamed: Renamed = RENAMED,
): WorksheetDocument | DocumentRefusal {
  const { data } = head.safeParse(value);
  if (!data) return 'notOurs';
  if (data.version > 2) return 'newerVersion';
  const present = data.version === 1 ? fromVersion1(value) : value;
  return fromVersion2(present, renamed) ?? 'damaged';
}
