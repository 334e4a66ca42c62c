/**
 * From the sheet as typed to the worksheet of the core: SI numbers where a box can be used, undefined where it is
 * empty or refused, and beside every box that is refused or unusual a sentence.
 * Units: SI out.
 * Source: definition.
 */
import type { InputValue, Worksheet, WorksheetCollar } from '../core/worksheet.ts';
import { emptyWorksheet } from '../core/worksheet.ts';
import type { UnitSystem } from '../units/kinds.ts';
import { type BoxReading, readBox } from './box.ts';
import type { QuantityField } from './field.ts';
import { FIELDS } from './fields.ts';
import { isDial, readDial } from './marks.ts';
import { findField, namesUnder, type QuantityUnder } from './paths.ts';
import {
  chosenAt,
  differing,
  entriesOf,
  isSameList,
  rowsOf,
  type Typed,
  typedAt,
} from './typed.ts';

/** A sheet that has been read. */
export interface WorksheetRead {
  readonly worksheet: Worksheet;
  /** Why a box cannot be used, by its path. */
  readonly refusals: Readonly<Record<string, string>>;
  /** What is unusual about a box that is used all the same, by its path. */
  readonly doubts: Readonly<Record<string, string>>;
}

type Readings = ReadonlyMap<string, BoxReading>;

type Quantities = readonly (readonly [name: string, field: QuantityField])[];

const quantitiesOf = new Map<string, Quantities>(); // by part, once asked

function quantitiesUnder(part: string, path: string): Quantities {
  const known = quantitiesOf.get(part);
  if (known) return known;
  const found = namesUnder(path).flatMap((name) => {
    const field = findField(`${path}.${name}`);
    return field && 'kind' in field ? [[name, field] as const] : [];
  });
  quantitiesOf.set(part, found);
  return found;
}

/** The quantities right under a part of the form, by name; of a row by its path. */
function under<Part extends string>(
  read: Readings,
  part: Part,
  path: string = part,
): Readonly<Record<QuantityUnder<Part>, InputValue>> {
  const values: Record<string, InputValue> = {};
  for (const [name, { whenEmpty }] of quantitiesUnder(part, path)) {
    const reading = read.get(`${path}.${name}`);
    values[name] = reading ? reading.value : whenEmpty;
  }
  return values as Record<QuantityUnder<Part>, InputValue>;
}

function collar(typed: Typed, read: Readings): WorksheetCollar {
  const kind = chosenAt(typed, 'tensioner.collar.kind');
  if (kind === 'unknown' || kind === 'none') return { kind };
  const { frictionLow, frictionHigh, ...ring } = under(read, 'tensioner.collar');
  return kind === 'bearing' ? { kind, ...ring } : { kind, frictionLow, frictionHigh, ...ring };
}

const RUNS_BACKWARDS = { unasked: undefined, backwards: true, forwards: false } as const;

function tensioner(typed: Typed, read: Readings): Worksheet['tensioner'] {
  const isOwn = chosenAt(typed, 'tensioner.thread.kind') === 'own';
  const form = chosenAt(typed, 'tensioner.thread.form');
  const designation = typedAt(typed, 'tensioner.thread.designation');
  return {
    ...under(read, 'tensioner'),
    kind: chosenAt(typed, 'tensioner.kind'),
    cylinder: under(read, 'tensioner.cylinder'),
    thread: isOwn
      ? { kind: 'own', form, ...under(read, 'tensioner.thread') }
      : { kind: 'designation', designation },
    friction: {
      kind: chosenAt(typed, 'tensioner.friction.kind'),
      ...under(read, 'tensioner.friction'),
    },
    collar: collar(typed, read),
  };
}

type Lists = Pick<Worksheet, 'readings' | 'ways' | 'bands'>;

/** What a list was, read from a sheet. */
type LastList<List extends keyof Lists> = { readonly typed: Typed; readonly value: Lists[List] };

const LISTS: {
  readonly [List in keyof Lists]: (
    typed: Typed,
    read: Readings,
    last: LastList<List> | undefined,
  ) => Lists[List];
} = {
  readings: (typed, read, last) =>
    rowsOf(
      typed,
      'readings',
      (path, at) => ({
        ...under(read, 'readings.*', path),
        struck: typedAt(typed, `readings.${at}.struck`),
      }),
      last,
    ),
  ways: (typed, read) =>
    rowsOf(typed, 'ways', (path, at) => ({
      ...under(read, 'ways.*', path),
      name: typedAt(typed, `ways.${at}.name`),
      readings: rowsOf(typed, `ways.${at}.readings`, (row) =>
        under(read, 'ways.*.readings.*', row),
      ),
    })),
  bands: (typed, read) =>
    rowsOf(typed, 'bands', (path, at) => ({
      ...under(read, 'bands.*', path),
      name: typedAt(typed, `bands.${at}.name`),
    })),
};

function assembled(typed: Typed, read: Readings, lists: Lists): Worksheet {
  return {
    ...emptyWorksheet,
    label: typedAt(typed, 'label'),
    mill: { ...under(read, 'mill'), strands: chosenAt(typed, 'mill.strands') },
    band: {
      ...under(read, 'band'),
      thicknessScatter: read.get('band.thickness')?.scatter,
      thicknessFrom: chosenAt(typed, 'band.thicknessFrom'),
    },
    tensioner: tensioner(typed, read),
    use: under(read, 'use'),
    rig: {
      ...under(read, 'rig'),
      dialRunsBackwards: RUNS_BACKWARDS[chosenAt(typed, 'rig.dialRuns')],
      dialWritten: chosenAt(typed, 'rig.dialWritten'),
      barMaterial: chosenAt(typed, 'rig.barMaterial'),
    },
    second: { ...under(read, 'second'), ends: chosenAt(typed, 'second.ends') },
    target: under(read, 'target'),
    demands: under(read, 'demands'),
    ...lists,
  };
}

function sentences(read: Readings, name: 'refusal' | 'doubt'): Readonly<Record<string, string>> {
  const said: Record<string, string> = {};
  for (const [path, { [name]: sentence }] of read) if (sentence) said[path] = sentence;
  return said;
}

/** Reads one box after the other; a box that has not changed since the last reading is not read again. */
export type SheetReader = (typed: Typed, system: UnitSystem) => WorksheetRead;

/** What was read, and what it was read from. */
interface Last {
  readonly typed: Typed;
  readonly system: UnitSystem;
  readonly graduation: InputValue; // m, of the dial
  readonly read: Readings;
  readonly lists: Lists;
}

/** A reader of one sheet. It never throws. */
export function sheetReader(): SheetReader {
  let last: Last | undefined;
  return (typed, system) => {
    const graduation = readBox(
      typedAt(typed, 'rig.graduation'),
      FIELDS['rig.graduation'],
      system,
    ).value;
    const isAsBefore = last?.system === system && last.graduation === graduation;
    const read = new Map(isAsBefore ? last?.read : undefined);
    const paths =
      isAsBefore && last ? differing(last.typed, typed) : entriesOf(typed).map(([path]) => path);
    for (const path of paths) {
      const field = findField(path);
      const text = typed[path];
      if (text === undefined) read.delete(path);
      else if (field && 'kind' in field)
        read.set(
          path,
          isDial(path) ? readDial(text, field, system, graduation) : readBox(text, field, system),
        );
    }
    const before = isAsBefore ? last : undefined;
    const listOf = <List extends keyof Lists>(list: List): Lists[List] => {
      const lastList = before && { typed: before.typed, value: before.lists[list] };
      return lastList && isSameList(lastList.typed, typed, list)
        ? lastList.value
        : LISTS[list](typed, read, lastList);
    };
    const lists = { readings: listOf('readings'), ways: listOf('ways'), bands: listOf('bands') };
    last = { typed, system, graduation, read, lists };
    return {
      worksheet: assembled(typed, read, lists),
      refusals: sentences(read, 'refusal'),
      doubts: sentences(read, 'doubt'),
    };
  };
}
