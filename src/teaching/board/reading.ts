/**
 * Sheets out of files and links, and what each comes to. Comes with the first of them: the form and the worksheet's
 * core are all of it. Nothing here throws for what a file holds.
 * Units: SI out.
 * Source: definition.
 */
import { coverage } from '../../core/assumptions.ts';
import {
  evaluateWorksheet,
  leadOf,
  loadName,
  type Waiting,
  type WorksheetResults,
} from '../../core/worksheet.ts';
import { typedOf, type WorksheetDocument } from '../../form/document.ts';
import { sheetReader, type WorksheetRead } from '../../form/reading.ts';
import { type DocumentRefusal, readDocument } from '../../form/schema.ts';
import { bareUnits } from '../../form/units.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { fromFile, fromLink } from '../../worksheet/io/outside.ts';
import { shownIn } from '../../worksheet/state/shown.ts';
import { refusalSentence } from '../../worksheet/words/refusal-words.ts';
import { VERDICTS } from '../../worksheet/words/verdict-words.ts';
import { waitingFor } from '../../worksheet/words/waiting-words.ts';
import type { LeftOut, Measured, ReadSheet, Waits } from './row.ts';

const WHY: Readonly<Record<DocumentRefusal, string>> = {
  notOurs: 'It is not a worksheet of this site.',
  newerVersion: 'A newer version of this page made it. Reload the page and try again.',
  damaged: 'It is damaged. Ask for it again.',
};
const EMPTY_BACKUP = 'It holds no sheet.';

/** What one file or link gave. */
export interface Found {
  readonly sheets: readonly ReadSheet[];
  readonly leftOut: readonly LeftOut[];
}

const inWords = ({ refusal, waitsFor }: Waiting, read: WorksheetRead): Waits => {
  const says = (system: UnitSystem) =>
    refusal
      ? refusalSentence(refusal, shownIn(system, loadName(read.worksheet.tensioner)))
      : waitingFor(waitsFor, read.refusals);
  return { waits: { metric: says('metric'), us: says('us') } };
};

/** The part of the stress's uncertainty that comes from the readings, as a share of the stress. */
function readingShare({ measured }: Pick<WorksheetResults, 'measured'>): number {
  if (!measured.ready) return 0;
  const own = measured.contributions.find(({ name }) => name === 'stretch');
  return (own?.contribution ?? 0) / measured.stress;
}

function stressOf(results: WorksheetResults, read: WorksheetRead): Measured | Waits {
  const { measured } = results;
  if (!measured.ready) return inWords(measured, read);
  const { stress: value, expandedUncertainty: expanded } = measured;
  return { value, expanded, own: value * readingShare(results) };
}

function efficiencyOf(results: WorksheetResults, read: WorksheetRead): Measured | Waits {
  const { efficiency: found } = results;
  if (!found.ready) return inWords(found, read);
  const { efficiency: value, standardUncertainty } = found;
  const expanded = coverage.factor * standardUncertainty;
  return { value, expanded, own: value * readingShare(results) };
}

/** What a sheet comes to. */
export function sheetOf(document: WorksheetDocument, from: string): ReadSheet {
  const read = sheetReader()(typedOf(document, bareUnits('metric')), 'metric');
  const results = evaluateWorksheet(read.worksheet);
  const { measured, efficiency, verdict } = results;
  const isScrew = read.worksheet.tensioner.kind === 'screw';
  return {
    label: read.worksheet.label,
    from,
    verdict: VERDICTS[verdict.grade],
    stress: stressOf(results, read),
    efficiency: efficiencyOf(results, read),
    topTorque: measured.ready && isScrew ? measured.topTorque : undefined,
    lead: efficiency.ready ? leadOf(efficiency.operands.drive) : undefined,
  };
}

/** The sheets of values out of a backup; each that cannot be read is named. */
function foundIn(values: readonly unknown[], from: string): Found {
  const read = values.map((value) => readDocument(value));
  return {
    sheets: read.flatMap((each) =>
      typeof each === 'string' ? [] : [sheetOf(each.document, from)],
    ),
    leftOut: read.flatMap((each, at) =>
      typeof each === 'string' ? [{ from: `${from}, sheet ${at + 1}`, why: WHY[each] }] : [],
    ),
  };
}

const none = (from: string, why: string): Found => ({ sheets: [], leftOut: [{ from, why }] });

/** What a file gives; of a backup at most `room` sheets are looked at. */
export async function foundInFile(file: File, room: number): Promise<Found> {
  const brought = await fromFile(file);
  if (typeof brought === 'string') return none(file.name, WHY[brought]);
  if ('document' in brought) return { sheets: [sheetOf(brought.document, file.name)], leftOut: [] };
  const { sheets } = brought;
  if (sheets.length === 0) return none(file.name, EMPTY_BACKUP);
  const found = foundIn(sheets.slice(0, room), file.name);
  const more = sheets.length - room;
  if (more <= 0) return found;
  const why = `${more} of its sheets found no room.`;
  return { ...found, leftOut: [...found.leftOut, { from: file.name, why }] };
}

/** What a pasted link gives: all that counts stands behind its #. */
export async function foundInLink(line: string, from: string): Promise<Found> {
  const brought = await fromLink(line.slice(line.indexOf('#') + 1));
  if (typeof brought === 'string') return none(from, WHY[brought]);
  return { sheets: [sheetOf(brought.document, from)], leftOut: [] };
}
