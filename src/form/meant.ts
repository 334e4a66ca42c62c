/**
 * What to type instead of a text that is more, or less, than one number: `about 4`, `0-250`, `4 or 5`, `14,000`.
 * Units: as typed. Never offers what a box would refuse; what it would doubt, only where nothing else can be offered.
 */

import { formatNumber } from '../units/format-number.ts';
import type { UnitSystem } from '../units/kinds.ts';
import { parseNumber } from '../units/reading/parse-number.ts';
import { tidyText } from '../units/reading/tidy-text.ts';
import { shareOfGraduation } from '../units/share-of-graduation.ts';
import { type BoxReading, readBox } from './box.ts';
import { type FieldPath, findField } from './paths.ts';

/** A sentence that says what to type, and the texts that it offers, by the boxes that they are for. */
export interface Meant {
  readonly says: string;
  readonly offers: Readonly<Record<string, string>>;
}

const LOOSE =
  /^±|[~≈<>≤≥=?]|(?<![a-z])(?:about|approx|approximately|around|circa|ca|roughly|nearly|almost|maybe|perhaps|up to|between|at least|at most|or so|ish)(?![a-z])\.?/gi;
const NUMBER = String.raw`((?:\d+[ -])?\d+ ?\/ ?\d+|\d*[.,]?\d+)`;
const ONE = new RegExp(String.raw`^(-?)${NUMBER} ?(\D*)$`);
const TWO = new RegExp(
  String.raw`^${NUMBER} ?(\D*?) ?(-|to|or|and|&|\.{2,}|…|±|\+ ?\/? ?-) ?${NUMBER} ?(\D*)$`,
  'i',
);
const GROUP = /^(-?\d{1,3})[.,](\d{3})(?: ?(\D*))$/;
const GIVE_OR_TAKE = /±|\+/;

const written = (number: string, unit: string) => `${number} ${unit}`.trim();
const rounded = (value: number) => formatNumber(value, { significant: 6, trim: true });

const ENDS = [
  ['low', 'high'],
  ['Low', 'High'],
] as const;

/** The boxes of the lowest and the highest, where a path is one of them. */
function rangeOf(path: string): readonly [low: string, high: string] | undefined {
  const start = path.replace(/(?:low|high)$/i, '');
  const pairs = ENDS.map(([low, high]) => [start + low, start + high] as const);
  return pairs.find((pair) => pair.includes(path) && pair.every(findField));
}

/** The box beside a path for how far off it may be. */
const giveOrTakeOf = (path: string) =>
  ['Uncertainty', 'HalfWidth'].map((ending) => path + ending).find(findField);

/** Two numbers as they were typed, in one unit. */
interface Two {
  readonly first: string;
  readonly second: string;
  readonly unit: string;
}

const inOne = (path: string, text: string, says: string): Meant => ({
  says: `Type one number${says}`,
  offers: { [path]: text },
});

function inTwo(path: string, text: string, beside: string, half: string): Meant {
  const says = `Type ${text} here and ${half} under “${findField(beside)?.label}”.`;
  return { says, offers: { [path]: text, [beside]: half } };
}

/** For `4 ± 1`. */
function aroundOne(path: string, { first, second, unit }: Two): readonly Meant[] {
  const [text, beside] = [written(first, unit), giveOrTakeOf(path)];
  const one = inOne(path, text, `. Did you mean ${text}?`);
  return beside ? [inTwo(path, text, beside, written(second, unit)), one] : [one];
}

function inRange(path: string, lowest: string, highest: string): readonly Meant[] {
  const range = rangeOf(path);
  if (!range) return [];
  const says = `Type ${lowest} in the first box and ${highest} in the second.`;
  return [{ says, offers: { [range[0]]: lowest, [range[1]]: highest } }];
}

/** For `4-5` and `4 or 5`, the most telling first. */
function fromTo(path: string, { first, second, unit }: Two): readonly Meant[] {
  const [a, b] = [parseNumber(first), parseNumber(second)];
  if (!a.ok || !b.ok || a.value === b.value) return [];
  if (a.value > b.value) return fromTo(path, { first: second, second: first, unit });
  const [low, high] = [written(first, unit), written(second, unit)];
  const [middle, half] = [(b.value + a.value) / 2, (b.value - a.value) / 2].map((value) =>
    written(rounded(value), unit),
  ) as [string, string];
  const [beside, several] = [giveOrTakeOf(path), written(`${first} ${second}`, unit)];
  const around = beside ? [inTwo(path, middle, beside, half)] : [];
  const single = [
    inOne(path, middle, `, such as ${middle}, halfway between.`),
    inOne(path, high, `: ${low} or ${high}.`),
  ];
  if (a.value === 0)
    return [...inRange(path, low, high), ...around, inOne(path, high, `. Did you mean ${high}?`)];
  return [
    ...inRange(path, low, high),
    inOne(path, several, `, or your readings with a space between: ${several}.`),
    ...around,
    ...single,
  ];
}

function candidates(path: string, typed: string, bareUnit = ''): readonly Meant[] {
  const text = tidyText(typed).replace(LOOSE, ' ').replace(/ +/g, ' ').trim();
  const [, sign = '', number = '', unit = ''] = ONE.exec(text) ?? [];
  const alone = written(sign + number, unit || bareUnit);
  if (number !== '') return [{ says: `Type just ${alone}.`, offers: { [path]: alone } }];
  const [, first = '', its = '', between = '', second = '', last = ''] = TWO.exec(text) ?? [];
  const two = { first, second, unit: last || its || bareUnit };
  return GIVE_OR_TAKE.test(between) ? aroundOne(path, two) : fromTo(path, two);
}

/** For `12-14` where the box takes it in no other way: what a wrench with inch-pounds shows. */
function inInchPounds(path: string, typed: string, system: UnitSystem): readonly Meant[] {
  const field = findField(path);
  if (system !== 'us' || !field || !('kind' in field) || field.kind !== 'torque') return [];
  return candidates(path, typed, 'in-lb').map(({ says, offers }) => ({
    says: `Does your wrench have inch-pounds? ${says}`,
    offers,
  }));
}

/** For `14,000`: as thousands, and as a decimal. */
function twoWays(path: string, typed: string): readonly Meant[] {
  const [, number = '', decimals = '', unit = ''] = GROUP.exec(tidyText(typed)) ?? [];
  if (number === '') return [];
  return [number + decimals, `${number}.${decimals}`].map((text) =>
    inOne(path, written(text, unit), `: ${written(text, unit)}.`),
  );
}

function readingOf(path: string, text: string, system: UnitSystem): BoxReading | undefined {
  const field = findField(path);
  return field && 'kind' in field && text !== '' ? readBox(text, field, system) : undefined;
}

const isRead = (reading: BoxReading | undefined) => reading?.value !== undefined;

/** Whether a box takes a text without a word against it. */
const isTaken = (reading: BoxReading | undefined) =>
  isRead(reading) && (reading?.doubt === undefined || reading.scatter !== undefined);

/** For `half` and `1/2`, of a dial: the length that this share of its graduation is. */
function inGraduations(path: string, typed: string, graduation: string): readonly Meant[] {
  const share = path === 'rig.readTo' ? shareOfGraduation(typed, graduation) : undefined;
  if (!share) return [];
  const says = `Type ${share.text}: ${share.name} of your graduation, ${graduation.trim()}.`;
  return [{ says, offers: { [path]: share.text } }];
}

/** What to type instead of what a box cannot read, or reads as another thing; undefined where nothing can be offered. */
export function meantInstead(
  path: FieldPath,
  typed: string,
  system: UnitSystem,
  graduation = '', // of the dial, as typed
): Meant | undefined {
  const [share] = inGraduations(path, typed, graduation).filter(({ offers }) =>
    isTaken(readingOf(path, offers[path] ?? '', system)),
  );
  if (share) return share;
  if (readingOf(path, typed, system)?.value !== undefined) return undefined;
  const eachIs =
    (fits: (reading: BoxReading | undefined) => boolean) =>
    ({ offers }: Meant) =>
      Object.entries(offers).every(([at, text]) => fits(readingOf(at, text, system)));
  const [one, other] = twoWays(path, typed).filter(eachIs(isTaken));
  if (one) return other ? undefined : one;
  const meant = [...candidates(path, typed), ...inInchPounds(path, typed, system)];
  return meant.find(eachIs(isTaken)) ?? meant.find(eachIs(isRead));
}
