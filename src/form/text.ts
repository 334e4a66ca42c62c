/**
 * The worksheet as it is typed: the text of every box and the choices made. This is what is kept and shared.
 * Units: none; a number typed without a unit is in the unit that its box shows.
 * Source: definition.
 */
import type { BarMaterial, WorksheetFriction, WorksheetThreadForm } from '../core/worksheet.ts';

/** The choices that are not boxes, each with what may be chosen; the first is the start. */
export const WORKSHEET_CHOICES = {
  thread: ['designation', 'own'],
  form: ['trapezoidal', 'acme', 'square', 'v60'],
  losses: ['friction', 'efficiency'],
  collar: ['none', 'collar'],
  dial: ['backwards', 'forwards'],
  bar: ['steel', 'aluminium', 'wood'],
  otherBand: ['none', 'some'],
} as const satisfies {
  readonly thread: readonly ['designation', 'own'];
  readonly form: readonly WorksheetThreadForm[];
  readonly losses: readonly WorksheetFriction['kind'][];
  readonly collar: readonly ['none', 'collar'];
  readonly dial: readonly ['backwards', 'forwards'];
  readonly bar: readonly BarMaterial[];
  readonly otherBand: readonly ['none', 'some'];
};

/** The name of a choice. */
export type ChoiceName = keyof typeof WORKSHEET_CHOICES;

/** What is chosen. */
export type WorksheetChoices = {
  readonly [Name in ChoiceName]: (typeof WORKSHEET_CHOICES)[Name][number];
};

/** One row of the loading series as typed. */
export interface ReadingText {
  readonly torque: string;
  readonly dial: string;
  readonly wholeTurns: string;
  readonly turns: string;
}

/** One dial reading of a way as typed. */
export type DialText = Pick<ReadingText, 'dial' | 'wholeTurns'>;

/** One named way of setting as typed. */
export interface WayText {
  readonly name: string;
  readonly torque: string;
  readonly readings: readonly DialText[];
}

/** The whole sheet as typed; `boxes` holds only what is not empty. */
export interface WorksheetText {
  readonly label: string;
  readonly designation: string; // of the thread
  readonly boxes: Readonly<Record<string, string>>;
  readonly choices: WorksheetChoices;
  readonly readings: readonly ReadingText[];
  readonly ways: readonly WayText[];
}

/** The most rows that a series, the ways and the readings of one way may have. */
export const MOST_ROWS = { readings: 60, ways: 12, wayReadings: 12 } as const;

/** A row with nothing in it. */
export const blankReading: ReadingText = { torque: '', dial: '', wholeTurns: '', turns: '' };

/** A way with nothing in it. */
export const blankWay: WayText = { name: '', torque: '', readings: [] };

/** A sheet with nothing typed. */
export const blankText: WorksheetText = {
  label: '',
  designation: '',
  boxes: {},
  choices: Object.fromEntries(
    Object.entries(WORKSHEET_CHOICES).map(([name, options]) => [name, options[0]]),
  ) as WorksheetChoices,
  readings: [],
  ways: [],
};

/** Whether a row holds nothing. */
export function isBlankRow(row: object): boolean {
  return Object.values(row).every((text) => text === '' || (Array.isArray(text) && !text.length));
}

/** Whether nothing at all has been typed. */
export function isBlankText(text: WorksheetText): boolean {
  return (
    text.label === '' &&
    text.designation === '' &&
    Object.keys(text.boxes).length === 0 &&
    text.readings.every(isBlankRow) &&
    text.ways.every(isBlankRow)
  );
}

/** Rows without the empty ones at the end. */
export function withoutTail<Row extends object>(rows: readonly Row[]): readonly Row[] {
  const last = rows.findLastIndex((row) => !isBlankRow(row));
  return rows.slice(0, last + 1);
}
