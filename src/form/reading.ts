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
import { FIELDS } from './fields.ts';
import { isDial, readDial } from './marks.ts';
import { findField, type ListPath, namesUnder, type QuantityUnder } from './paths.ts';
import { chosenAt, entriesOf, rowCount, type Typed, typedAt } from './typed.ts';

/** A sheet that has been read. */
export interface WorksheetRead {
  readonly worksheet: Worksheet;
  /** Why a box cannot be used, by its path. */
  readonly refusals: Readonly<Record<string, string>>;
  /** What is unusual about a box that is used all the same, by its path. */
  readonly doubts: Readonly<Record<string, string>>;
}

type Readings = ReadonlyMap<string, BoxReading>;

function valueAt(read: Readings, path: string): InputValue {
  const reading = read.get(path);
  if (reading) return reading.value;
  const field = findField(path);
  return field && 'kind' in field ? field.whenEmpty : undefined;
}

/** The quantities right under a part of the form, by name; of a row by its path. */
function under<Part extends string>(
  read: Readings,
  part: Part,
  path: string = part,
): Readonly<Record<QuantityUnder<Part>, InputValue>> {
  const quantities = namesUnder(path).flatMap((name) => {
    const field = findField(`${path}.${name}`);
    return field && 'kind' in field ? [[name, valueAt(read, `${path}.${name}`)]] : [];
  });
  return Object.fromEntries(quantities);
}

function rows<Row>(typed: Typed, list: ListPath, row: (path: string, at: number) => Row): Row[] {
  return Array.from({ length: rowCount(typed, list) }, (_, at) => row(`${list}.${at}`, at));
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

function assembled(typed: Typed, read: Readings): Worksheet {
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
    readings: rows(typed, 'readings', (path, at) => ({
      ...under(read, 'readings.*', path),
      struck: typedAt(typed, `readings.${at}.struck`),
    })),
    second: { ...under(read, 'second'), ends: chosenAt(typed, 'second.ends') },
    ways: rows(typed, 'ways', (path, at) => ({
      ...under(read, 'ways.*', path),
      name: typedAt(typed, `ways.${at}.name`),
      readings: rows(typed, `ways.${at}.readings`, (row) => under(read, 'ways.*.readings.*', row)),
    })),
    target: under(read, 'target'),
    demands: under(read, 'demands'),
    bands: rows(typed, 'bands', (path, at) => ({
      ...under(read, 'bands.*', path),
      name: typedAt(typed, `bands.${at}.name`),
    })),
  };
}

function sentences(read: Readings, name: 'refusal' | 'doubt'): Readonly<Record<string, string>> {
  const pairs = [...read].flatMap(([path, box]) => (box[name] ? [[path, box[name]]] : []));
  return Object.fromEntries(pairs);
}

/** Reads one box after the other; a box that has not changed since the last reading is not read again. */
export type SheetReader = (typed: Typed, system: UnitSystem) => WorksheetRead;

/** A reader of one sheet. It never throws. */
export function sheetReader(): SheetReader {
  let last: Readings = new Map();
  let marks: InputValue; // m, of the graduation
  let was: { readonly typed: Typed; readonly system: UnitSystem } | undefined;
  return (typed, system) => {
    const read = new Map<string, BoxReading>();
    const graduation = readBox(typedAt(typed, 'rig.graduation'), FIELDS['rig.graduation'], system);
    const isAsBefore = was?.system === system && marks === graduation.value;
    for (const [path, text] of entriesOf(typed)) {
      const field = findField(path);
      if (!field || !('kind' in field)) continue;
      const isKept = was?.system === system && (isAsBefore || !isDial(path));
      const known = isKept && was?.typed[path] === text ? last.get(path) : undefined;
      read.set(
        path,
        known ??
          (isDial(path)
            ? readDial(text, field, system, graduation.value)
            : readBox(text, field, system)),
      );
    }
    marks = graduation.value;
    [last, was] = [read, { typed, system }];
    return {
      worksheet: assembled(typed, read),
      refusals: sentences(read, 'refusal'),
      doubts: sentences(read, 'doubt'),
    };
  };
}
