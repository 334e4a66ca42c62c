/** Links and files of many sheets, damaged at random: how many are refused, which the page tells, open as they were, or open as another sheet. */
import { readdirSync, readFileSync } from 'node:fs';
import { type RandomSource, randomSource } from '../../src/core/random.ts';
import { readDocument } from '../../src/form/schema.ts';
import { sealed } from '../../src/worksheet/io/file.ts';
import { fromFile, fromLink } from '../../src/worksheet/io/outside.ts';
import { packed } from '../../src/worksheet/io/packing.ts';
import { damaged } from './damage.ts';

const folder = new URL('../form/fixtures/', import.meta.url);

/** How damaged links and files came out; `others` holds those that opened as another sheet. */
export interface Fuzzed {
  readonly refused: number;
  readonly unharmed: number;
  readonly others: readonly string[];
}

/** The sheets of the fixtures as they are written today. */
function sheets(): readonly unknown[] {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return names
    .filter((name) => name.endsWith('.json'))
    .map((name) => readDocument(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))))
    .flatMap((read) => (typeof read === 'string' ? [] : [read.document]));
}

const broughtBy = {
  link: (text: string) => fromLink(`#${text}`),
  file: (text: string) => fromFile(new File([text], 'sheet.json')),
};

type Way = keyof typeof broughtBy;

async function outcome(way: Way, text: string, sheet: unknown, chance: RandomSource) {
  const sent = damaged(text, chance);
  const brought = await broughtBy[way](sent);
  if (typeof brought === 'string') return 'refused';
  if ('sheets' in brought) return sent; // it was one sheet
  const isSame = JSON.stringify(brought.document) === JSON.stringify(sheet);
  return isSame ? 'unharmed' : sent;
}

/** Damages `count` links and files. */
export async function fuzzed(count: number, seed: number): Promise<Fuzzed> {
  const chance = randomSource(seed);
  const texts = await Promise.all(
    sheets().map(async (sheet) => ({
      sheet,
      link: await packed(sheet),
      file: await sealed({ sheet }),
    })),
  );
  if (texts.length === 0) throw new RangeError('there must be sheets to damage');
  const outcomes: string[] = [];
  for (let place = 0; place < count; place += 1) {
    const { sheet, ...ways } = texts[place % texts.length] as (typeof texts)[number];
    const way: Way = chance.uniform() < 0.5 ? 'link' : 'file';
    outcomes.push(await outcome(way, ways[way], sheet, chance));
  }
  const others = outcomes.filter((each) => each !== 'refused' && each !== 'unharmed');
  const of = (kind: string) => outcomes.filter((each) => each === kind).length;
  return { refused: of('refused'), unharmed: of('unharmed'), others };
}
