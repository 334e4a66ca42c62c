/**
 * What the worksheet wants told beside its results, in the reader's words; one sentence for each code of the core.
 * Units: SI in, the reader's out.
 */

import { leastMargins, yieldShares } from '../../core/assumptions.ts';
import type { StopCode, WorksheetGuard, WorksheetGuardCode } from '../../core/worksheet.ts';
import { apartSentence } from '../compare/apart-words.ts';
import type { Shown } from '../state/shown.ts';
import { refusalSentence, type ToldValues } from './refusal-words.ts';
import { bandName } from './setting-words.ts';

type Sentence = (values: ToldValues, shown: Shown) => string;
type SpokenCode = Exclude<WorksheetGuardCode, StopCode>;

const rows = (count: number) => (count === 1 ? 'One row' : `${count} rows`);

const SENTENCES: Readonly<Record<SpokenCode, Sentence>> = {
  nearYield: ({ share }, { number }) =>
    `Bent over the wheel, the steel may reach ${number(share * 100, 3)} % of its yield strength, uncertainty included. Bands crack early above ${number(yieldShares.shortLife * 100)} %.`,
  nearSlip: () => 'The band is close to slipping on its wheel.',
  outsideCommonPractice: ({ low, high }, { range }) =>
    `Few small bands run outside ${range(low, high, 'stress')} (common practice, no source).`,
  mayBackOff: ({ threadFriction, selfLockingFriction }, { number }) =>
    `Lock the screw: it may back off with vibration. To hold by itself with a margin its thread needs a friction of ${number(leastMargins.selfLocking * selfLockingFriction, 2)}, and yours may be only ${number(threadFriction, 2)}.`,
  wideUncertainty: ({ share }, { number, load }) =>
    `The stress could be off by ${number(share * 100, 2)} % either way. The ${load.name} repeats better than that.`,
  aboveBearingLimit: () =>
    'STOP. The load on the wheel’s bearings would be more than they are made for.',
  discSpringTooFlat: () => 'STOP. The disc springs would be pressed almost flat.',
  bendingNotJudged: () =>
    'Bending over the wheel is not checked yet: fill in the wheel’s diameter.',
  doesNotRise: (_, { load }) => `The dial does not rise with the ${load.name}.`,
  wideInterval: () =>
    'The zero is uncertain. Take more readings in the upper half, or start a series at a tenth of the load.',
  tooWideForStress: () => 'The zero is too uncertain to give a stress.',
  neverStraight: () =>
    'The result is rough: the readings bend all the way up. Check, cheapest first: a bar that warms in your hands, a loose clamp, the bar’s weight, a slide that sticks.',
  startsHigh: ({ share }, { number }) =>
    `The result is rough: the lowest reading used is above ${number(share * 100)} % of the load, and a bend below it does not show. Start at about a tenth.`,
  missedDialTurn: ({ row, turns, isAlone }, shown) => {
    const where = isAlone ? `in ${shown.row(row)}` : `from ${shown.row(row)} on`;
    const [off, what] = turns > 0 ? ['short', 'put 1 turn more'] : ['too far', 'put 1 turn less'];
    return `The dial seems a whole turn ${off} ${where}. If the hand’s passes of zero say so too, ${what} ${where}.`;
  },
  oddRow: ({ row, off }, { quantity, row: name }) =>
    `Check ${name(row)} for a wrong digit or a slipped clamp: it shows ${quantity(Math.abs(off), 'stretch')} ${off > 0 ? 'more' : 'less'} stretch than the rows beside it suggest.`,
  dialDirectionTaken: ({ backwards }) =>
    `Say which way the dial runs. By your readings its number ${backwards ? 'falls' : 'rises'} as the band stretches, and so it is taken.`,
  rowsLeftOut: ({ count }, { load }) =>
    `${rows(count)} not used: the ${load.name} or the dial is missing or cannot be read.`,
  rowsBelowDrag: ({ count }, { load }) =>
    `${rows(count)} not used: the ${load.name} there only ${load.idle} and does not pull the band yet.`,
  rowsWithoutTorque: ({ count }, { load }) =>
    `${rows(count)} not used for the line: with no ${load.name} the band hangs slack, and the dial shows its curve.`,
  aboveWindow: ({ edge, lifeKept }, { quantity }) =>
    lifeKept === undefined
      ? `Think again about the target: set cold above ${quantity(edge, 'stress')}, bend and pull together pass ${quantity(yieldShares.shortLife, 'percent')} of the steel’s yield strength. A number from the band’s maker comes first.`
      : `Set cold above ${quantity(edge, 'stress')}, the band would last less than ${quantity(lifeKept, 'percent')} as long as at today’s setting. A number from the band’s maker comes first.`,
  belowWindow: ({ edge }, { quantity }) =>
    Number.isFinite(edge)
      ? `Think again about the target: below ${quantity(edge, 'stress')} the band slips, or moves sideways more than you allowed.`
      : 'No tension is enough: the rim is too slippery for that cut.',
  rowsStruck: ({ count }) => `${rows(count)} struck out and not used.`,
  fewerTurnsThanBand: () =>
    'There are fewer turns than the band alone needs. Did you miss a flat, or was the band not rolled round?',
  beyondReadings: ({ topTorque }, { quantity, load }) =>
    `Measure up to this ${load.name}: it is above your highest reading, ${quantity(topTorque, load.name)}.`,
  apart: ({ topTorque }, shown) => apartSentence(topTorque, shown),
  mayExceedBandLimit: ({ highest, limit }, { quantity }) =>
    `Choose a lower target: uncertainty included, the stress may reach ${quantity(highest, 'stress')}; the band’s maker allows ${quantity(limit, 'stress')}.`,
  mayExceedMillLimit: ({ highest, limit }, { quantity }) =>
    `Choose a lower target: uncertainty included, the force on the wheel may reach ${quantity(highest, 'force')}; the mill’s maker allows ${quantity(limit, 'force')}.`,
  torqueFalls: ({ row }, { load, row: name }) =>
    `Take the series again, always ${load.turning}: from ${name(row)} on the ${load.name} falls, and on the way down it is another for the same tension.`,
  dialFalls: ({ row, back }, { quantity, load, row: name }) =>
    `Read ${name(row)} again: the ${load.name} rose and the dial went back by ${quantity(back, 'stretch')}. Look for a clamp that slipped, a hand on the bar or a wrong digit.`,
  useMayExceed: ({ torque, highest }, { quantity, load }) =>
    `Use less than the ${quantity(torque, load.name)} that you use now: above ${quantity(highest, load.name)} the stress may pass what the makers allow.`,
  readingsAboveAllowed: ({ stress, allowed }, { quantity }) =>
    `Let the band off: these readings went to ${quantity(stress, 'stress')}, and the makers allow ${quantity(allowed, 'stress')}.`,
  wayAboveAllowed: ({ stress, allowed }, { quantity }) =>
    `STOP. Do not use a way that gives ${quantity(stress, 'stress')}: the makers allow ${quantity(allowed, 'stress')}.`,
  wayBeyondReadings: ({ torque, topTorque }, { quantity, load }) =>
    `Measure up to ${quantity(torque, load.name)}: this way is above your highest reading, ${quantity(topTorque, load.name)}.`,
};

function isSpoken(code: WorksheetGuardCode): code is SpokenCode {
  return Object.hasOwn(SENTENCES, code);
}

/** The sentence for a guard; one about another band says which, by its name if it has one. */
export function guardSentence(
  { code, values, inputs }: WorksheetGuard,
  shown: Shown,
  bandNames: readonly string[] = [],
): string {
  const sentence = isSpoken(code)
    ? SENTENCES[code](values as ToldValues, shown)
    : refusalSentence({ code, values }, shown);
  const [, band] = /^bands\.(\d+)/.exec(inputs[0] ?? '') ?? [];
  if (band === undefined) return sentence;
  return `${bandName({ name: bandNames[Number(band)] ?? '' }, Number(band))}: ${sentence}`;
}
