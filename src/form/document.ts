/**
 * The worksheet as it is kept, linked and filed: our own versioned JSON. Text as typed, with the units that bare
 * numbers had when it was written, so that neither the reader's unit switch nor a later site changes their meaning.
 * Units: as typed.
 * Source: definition.
 */
import type { DialText, ReadingText, WorksheetChoices, WorksheetText } from './text.ts';
import { WORKSHEET_CHOICES, withoutTail } from './text.ts';
import type { BareUnits } from './units.ts';
import { inUnits } from './units.ts';

/** What every one of our files says it is. */
export const DOCUMENT_FORMAT = 'tension-notebook worksheet';

/** Version 1: rows as lists of cells, choices only where they are not the first one. */
export interface WorksheetDocument {
  readonly format: typeof DOCUMENT_FORMAT;
  readonly version: 1;
  readonly units: Readonly<Record<string, string>>;
  readonly label: string;
  readonly thread: string;
  readonly boxes: Readonly<Record<string, string>>;
  readonly choices: Readonly<Partial<WorksheetChoices>>;
  readonly readings: readonly (readonly string[])[];
  readonly ways: readonly {
    readonly name: string;
    readonly torque: string;
    readonly readings: readonly (readonly string[])[];
  }[];
}

const readingCells = ({ torque, dial, wholeTurns, turns }: ReadingText) => [
  torque,
  dial,
  wholeTurns,
  turns,
];
const dialCells = ({ dial, wholeTurns }: DialText) => [dial, wholeTurns];

function changedChoices(choices: WorksheetChoices): Partial<WorksheetChoices> {
  const changed = Object.entries(choices).filter(
    ([name, chosen]) => chosen !== WORKSHEET_CHOICES[name as keyof WorksheetChoices][0],
  );
  return Object.fromEntries(changed);
}

/** The document of a sheet whose bare numbers are in `units`. */
export function documentOf(text: WorksheetText, units: BareUnits): WorksheetDocument {
  return {
    format: DOCUMENT_FORMAT,
    version: 1,
    units,
    label: text.label,
    thread: text.designation,
    boxes: text.boxes,
    choices: changedChoices(text.choices),
    readings: withoutTail(text.readings).map(readingCells),
    ways: withoutTail(text.ways).map(({ name, torque, readings }) => ({
      name,
      torque,
      readings: withoutTail(readings).map(dialCells),
    })),
  };
}

/** The sheet of a document, its bare numbers brought to `units` without changing what they mean. */
export function textOf(document: WorksheetDocument, units: BareUnits): WorksheetText {
  const first = Object.fromEntries(
    Object.entries(WORKSHEET_CHOICES).map(([name, options]) => [name, options[0]]),
  ) as unknown as WorksheetChoices;
  const text: WorksheetText = {
    label: document.label,
    designation: document.thread,
    boxes: document.boxes,
    choices: { ...first, ...document.choices },
    readings: document.readings.map(([torque = '', dial = '', wholeTurns = '', turns = '']) => ({
      torque,
      dial,
      wholeTurns,
      turns,
    })),
    ways: document.ways.map(({ name, torque, readings }) => ({
      name,
      torque,
      readings: readings.map(([dial = '', wholeTurns = '']) => ({ dial, wholeTurns })),
    })),
  };
  return inUnits(text, document.units, units);
}
