/**
 * What a worksheet from outside must look like: a link, a file, or the browser's own store, which others can write
 * too. Loaded only when one of them is there.
 * Units: none.
 * Source: definition.
 */
import * as z from 'zod/mini';
import { DOCUMENT_FORMAT, type WorksheetDocument } from './document.ts';
import { fieldAt } from './fields.ts';
import { MOST_ROWS, WORKSHEET_CHOICES } from './text.ts';

/** Why something is not a worksheet that this page can open. */
export type DocumentRefusal = 'notOurs' | 'newerVersion' | 'damaged';

const typed = z.string().check(z.maxLength(200));
const choice = <const Options extends readonly [string, ...string[]]>(options: Options) =>
  z.optional(z.enum(options));
const rows = (cells: number, most: number) =>
  z.array(z.array(typed).check(z.maxLength(cells))).check(z.maxLength(most));
const boxPath = z.string().check(z.refine((path) => fieldAt(path) !== undefined));

const version1 = z.object({
  format: z.literal(DOCUMENT_FORMAT),
  version: z.literal(1),
  units: z.record(z.string().check(z.maxLength(30)), z.string().check(z.maxLength(20))),
  label: typed,
  thread: typed,
  boxes: z.record(boxPath, typed),
  choices: z.object({
    thread: choice(WORKSHEET_CHOICES.thread),
    form: choice(WORKSHEET_CHOICES.form),
    losses: choice(WORKSHEET_CHOICES.losses),
    collar: choice(WORKSHEET_CHOICES.collar),
    dial: choice(WORKSHEET_CHOICES.dial),
    bar: choice(WORKSHEET_CHOICES.bar),
    otherBand: choice(WORKSHEET_CHOICES.otherBand),
  }),
  readings: rows(4, MOST_ROWS.readings),
  ways: z
    .array(z.object({ name: typed, torque: typed, readings: rows(2, MOST_ROWS.wayReadings) }))
    .check(z.maxLength(MOST_ROWS.ways)),
});

const head = z.object({ format: z.literal(DOCUMENT_FORMAT), version: z.number() });

/** A reader for each version that was ever written; old ones stay. */
const readers: Readonly<Record<number, (value: unknown) => WorksheetDocument | undefined>> = {
  1: (value) => version1.safeParse(value).data as WorksheetDocument | undefined,
};

/** The worksheet in `value`, or why there is none. Never throws. */
export function readDocument(value: unknown): WorksheetDocument | DocumentRefusal {
  const { data } = head.safeParse(value);
  if (!data) return 'notOurs';
  const reader = readers[data.version];
  if (!reader) return data.version > 1 ? 'newerVersion' : 'damaged';
  return reader(value) ?? 'damaged';
}
