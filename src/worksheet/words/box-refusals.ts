/**
 * What the core refuses, put beside the boxes it is about: the first box among them that holds something; and what it
 * wants told of one box of one reading, put under that row.
 */
import type { Waiting, Worksheet, WorksheetResults } from '../../core/worksheet.ts';
import type { Typed } from '../../form/typed.ts';
import type { Shown } from '../state/shown.ts';
import { toldGuards } from '../state/told-guards.ts';
import { refusalSentence } from './refusal-words.ts';

const isWaiting = (value: unknown): value is Waiting =>
  typeof value === 'object' && value !== null && (value as Waiting).ready === false;

/** Every result that is refused. */
function refusedIn(results: WorksheetResults): readonly Waiting[] {
  const ways = results.ways.flatMap(({ fromTorque, fromReadings }) => [fromTorque, fromReadings]);
  const bands = results.bands.flatMap((band) => Object.values(band));
  return [...Object.values(results), ...ways, ...bands]
    .filter(isWaiting)
    .filter(({ refusal }) => refusal);
}

/** Sentences by the path of their box. */
export function refusalsBesideBoxes(
  results: WorksheetResults,
  typed: Typed,
  shown: Shown,
): Readonly<Record<string, string>> {
  const pairs = refusedIn(results).flatMap(({ refusal, waitsFor }) => {
    const path = waitsFor.find((each) => Object.hasOwn(typed, each));
    return path !== undefined && refusal ? [[path, refusalSentence(refusal, shown)]] : [];
  });
  return Object.fromEntries(pairs.reverse()); // the first refusal of a box stands
}

/** What is asked where the body is as wide as the band over its teeth: right without teeth, a slip with them. */
export const bodyDoubt = ({ band }: Worksheet): Readonly<Record<string, string>> =>
  band.bodyWidth !== undefined && band.bodyWidth === band.widthOverTeeth
    ? {
        'band.bodyWidth':
          'The same as over the teeth? The body goes from the back to the bottom of the gullets. Only on a band without teeth are they the same.',
      }
    : {};

/** The box of one reading that a guard is about, where it is about one. */
export function readingBox(fields: readonly string[]): string | undefined {
  return fields.find((path) => /^readings\.\d+\.\w/.test(path));
}

/** Sentences about single readings, by the path of their box. */
export function doubtsBesideReadings(
  { guards }: WorksheetResults,
  shown: Shown,
): Readonly<Record<string, string>> {
  const ofReadings = guards.filter(({ inputs }) => readingBox(inputs) !== undefined);
  const pairs = toldGuards(ofReadings, shown).map(({ guard, sentence }) => [
    readingBox(guard.inputs),
    sentence,
  ]);
  return Object.fromEntries(pairs);
}
