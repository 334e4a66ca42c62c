/**
 * What of a sheet goes on its card, and in which size of letters: as large as all of it allows. What does not fit in the
 * smallest is told by its number.
 * Units: lines of the card.
 * Source: definition; the heights are those of the card's style sheets.
 */
import { loadIn, type Worksheet, type WorksheetResults } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';
import { type CardLine, cardWarnings, wayLines } from './contents.ts';
import { type CardSize, fitting, linesOf, SIZES } from './room.ts';
import { bandLines, type CardBand, isForSetting, ownBand } from './settings.ts';

const FEW_BANDS = 2; // besides the measured one: each has its torque in large numerals
const FEW_WAYS = 3; // a line each
const TORQUE = 4.75; // lines of a torque in large numerals with what goes with it
const WORDS = 5.5; // of one that is no larger than its words, without those
const SMALLER = 2.7; // of one that is not for setting, which stands alone
const LIMIT = 1; // beside those words; numerals have room for it
const STOPPED = 3.2;
const ANOTHER_FACT = 1; // more than stand beside the code
const FACTS_WITH_ROOM = 2; // of those that are not on every card
const BETWEEN = 0.25; // sentences of the lists
const WORDS_SCALE = 1.6; // of those words' letters
const TABLE_HEAD = 1;
const TABLE_ROW = 2;
const NAME_SCALE = 2.2; // of the mill's name
const SECOND_LINE_OF_NAME = 2;
const LEAST_ROWS = 3; // of the log, but for one that is spared
const MOST_ROWS = 8;
const LINES_OF_ROW = 2;
const SPARED = 1.75; // lines of a row that is given up before letters get smaller
const ROWS_BESIDE_TORQUES = 2;
const LINES_BESIDE_TORQUES = 3; // for each such row: most of the room is the torques'

/** The lists of the card, whole. */
interface Lists {
  readonly bands: readonly CardBand[];
  readonly ways: readonly CardLine[];
  readonly warnings: readonly string[];
}

/** The card, ready to be drawn. */
export interface CardLayout extends Lists {
  readonly size: CardSize['name'];
  readonly blocks: readonly CardBand[]; // torques in large numerals, the measured band's first
  readonly areFewWays: boolean;
  readonly more: Readonly<Record<keyof Lists, number>>; // left to the sheet
  readonly logRows: number;
}

function linesOfBlock({ setting, limit }: CardBand, letters: number): number {
  if (!setting) return STOPPED;
  if (!setting.first) return TORQUE;
  const words = WORDS_SCALE * linesOf(setting.first, letters / WORDS_SCALE);
  return WORDS - (isForSetting(setting) ? 0 : SMALLER) + (limit ? LIMIT : 0) + words;
}

/** What each item of the lists takes, list by list. */
const costsOf = ({ bands, ways, warnings }: Lists, letters: number): readonly number[][] => [
  bands.map((_, place) => TABLE_ROW + (place === 0 ? TABLE_HEAD : 0)),
  warnings.map((warning) => BETWEEN + linesOf(warning, letters)),
  ways.map((_, place) => (ways.length <= FEW_WAYS || place % 2 === 0 ? 1 : 0)), // else two to a line
];

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);

/** Facts that are not on every card: a line for the limit, up to where to measure. */
function moreFacts(blocks: readonly CardBand[]): number {
  const ofLimit = blocks[0]?.limit ? 0 : 1;
  return ofLimit + blocks.filter(({ setting }) => setting?.trust === 'provisional').length;
}

/** What stands beside the lists: more of a long name, the blocks, more facts than usual. */
function linesBeside(blocks: readonly CardBand[], name: string, letters: number): number {
  const ofName = linesOf(name, letters / NAME_SCALE) > 1 ? SECOND_LINE_OF_NAME : 0;
  const ofFacts = ANOTHER_FACT * Math.max(0, moreFacts(blocks) - FACTS_WITH_ROOM);
  return ofName + ofFacts + sum(blocks.map((block) => linesOfBlock(block, letters)));
}

/** How many rows the log has where so many lines are left over: where the own torque may be set, the torques take their part. */
function logRows([own]: readonly CardBand[], left: number): number {
  const [most, lines] =
    own?.setting && !own.setting.first
      ? [ROWS_BESIDE_TORQUES, LINES_BESIDE_TORQUES]
      : [MOST_ROWS - LEAST_ROWS, LINES_OF_ROW];
  return LEAST_ROWS + Math.max(0, Math.min(most, Math.floor(left / lines)));
}

/** How many of each list fit: bands and warnings in turn, then ways. */
function takenOf(lists: Lists, letters: number, left: number): readonly [number, number, number] {
  const [bands = [], warnings = [], ways = []] = costsOf(lists, letters);
  if (sum([...bands, ...warnings, ...ways]) <= left)
    return [bands.length, warnings.length, ways.length];
  const first = [bands, warnings];
  const aboutWays = ways.length > 0 ? 1 : 0; // a line for the words about what is left out
  const taken = fitting(first, left - aboutWays);
  const used = first.map((costs, at) => {
    const count = taken[at] ?? 0;
    return sum(costs.slice(0, count)) + (count < costs.length ? 1 : 0);
  });
  const [forBands = 0, forWarnings = 0] = taken;
  return [forBands, forWarnings, fitting([ways], left - sum(used))[0] ?? 0];
}

/** All that could go on the card beside its blocks. */
const listsOf = (results: WorksheetResults, shown: Shown, worksheet: Worksheet): Lists => ({
  bands: bandLines(results, shown, worksheet),
  ways: wayLines(
    results,
    shown,
    worksheet.ways.map((way) => loadIn(worksheet, way)),
  ),
  warnings: cardWarnings(results, shown),
});

/** Lays out the card of a sheet. */
export function cardLayout(
  results: WorksheetResults,
  shown: Shown,
  worksheet: Worksheet,
  name: string,
): CardLayout {
  const all = listsOf(results, shown, worksheet);
  const own = ownBand(results, shown, worksheet);
  const areFew = all.bands.length <= FEW_BANDS;
  const blocks = areFew ? [own, ...all.bands] : [own];
  const lists = areFew ? { ...all, bands: [] } : all;
  const wanted = (letters: number): number => sum(costsOf(lists, letters).flat());
  const leftIn = ({ lines, letters }: CardSize): number =>
    lines - linesBeside(blocks, name, letters);
  const fits = (each: CardSize, spared: number) => wanted(each.letters) <= leftIn(each) + spared;
  const size = SIZES.find((each) => fits(each, SPARED)) ?? SIZES[2];
  const isShort = fits(size, SPARED) && !fits(size, 0);
  const left = leftIn(size) + (isShort ? SPARED : 0);
  const [forBands, forWarnings, forWays] = takenOf(lists, size.letters, left);
  return {
    size: size.name,
    blocks,
    bands: lists.bands.slice(0, forBands),
    ways: lists.ways.slice(0, forWays),
    warnings: lists.warnings.slice(0, forWarnings),
    areFewWays: lists.ways.length <= FEW_WAYS,
    more: {
      bands: lists.bands.length - forBands,
      ways: lists.ways.length - forWays,
      warnings: lists.warnings.length - forWarnings,
    },
    logRows: isShort ? LEAST_ROWS - 1 : logRows(blocks, left - wanted(size.letters)),
  };
}
