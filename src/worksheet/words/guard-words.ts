/**
 * What the worksheet wants told beside its results, in the reader's words; one sentence for each code of the core.
 * Units: SI in, the reader's out.
 */

import { yieldShares } from '../../core/assumptions.ts';
import type { StopCode, WorksheetGuard, WorksheetGuardCode } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';
import { refusalSentence } from './refusal-words.ts';

type Values = Readonly<Record<string, number>>;
type Sentence = (values: Values, shown: Shown) => string;
type SpokenCode = Exclude<WorksheetGuardCode, StopCode>;

const unknown = Number.NaN;
const rows = (count: number) => (count === 1 ? 'One row' : `${count} rows`);

const SENTENCES: Readonly<Record<SpokenCode, Sentence>> = {
  nearYield: ({ share = unknown }, { number }) =>
    `Bent over the wheel, the steel may reach, uncertainty included, ${number(share * 100, 2)} % of its yield strength. Bands do not live long above ${number(yieldShares.shortLife * 100)} %.`,
  nearSlip: () => 'The band is close to slipping on its wheel.',
  outsideCommonPractice: ({ low = unknown, high = unknown }, { range }) =>
    `Outside common practice for small bands, ${range(low, high, 'stress')}.`,
  mayBackOff: ({ threadFriction = unknown, selfLockingFriction = unknown }, { number }) =>
    `The screw may back off with vibration: lock it. Its thread locks by itself from a friction of ${number(selfLockingFriction, 2)} on, and yours may be as low as ${number(threadFriction, 2)}.`,
  wideUncertainty: ({ share = unknown }, { number }) =>
    `Known to ${number(share * 100, 2)} %: good enough to repeat, not to compare with a catalogue.`,
  aboveBearingLimit: () => 'STOP. The wheel’s bearings would carry more than they are made for.',
  discSpringTooFlat: () => 'STOP. The disc springs would be pressed almost flat.',
  bendingNotJudged: () =>
    'Bending over the wheel is not judged: it needs the wheel’s diameter and the band’s thickness.',
  doesNotRise: () => 'The dial does not rise with the torque.',
  wideInterval: () =>
    'The zero is not well found. More readings in the upper half, or a series that starts at a tenth of the load, narrow it.',
  tooWideForStress: () => 'The zero is too vague to give a stress.',
  neverStraight: () =>
    'No part of the readings is straight enough to trust. Look for a loose clamp, the weight of the bar, or a slide that sticks.',
  missedDialTurn: ({ row = unknown, turns = unknown }) =>
    `From row ${row + 1} on, the dial looks a whole turn ${turns > 0 ? 'short' : 'too far'}. Count the turns of its hand again.`,
  oddRow: ({ row = unknown, off = unknown }, { quantity }) =>
    `Row ${row + 1} is out of line: ${quantity(Math.abs(off), 'stretch')} ${off > 0 ? 'more' : 'less'} stretch than the rows beside it suggest. Check it: a wrong digit looks like this, and so does a slipped clamp.`,
  rowsLeftOut: ({ count = unknown }) =>
    `${rows(count)} left out: torque or dial is missing, or cannot be used.`,
  rowsBelowDrag: ({ count = unknown }) =>
    `${rows(count)} left out: the torque there only turns the empty screw.`,
  fewerTurnsThanBand: () =>
    'The turns counted are fewer than the band alone needs: a flat was missed, or the band was not yet rolled round.',
  beyondReadings: ({ topTorque = unknown }, { quantity }) =>
    `Measure up to this torque: it is above your highest reading, ${quantity(topTorque, 'torque')}.`,
  mayExceedBandLimit: ({ highest = unknown, limit = unknown }, { quantity }) =>
    `Uncertainty included, the stress may reach ${quantity(highest, 'stress')}; the band’s maker allows ${quantity(limit, 'stress')}.`,
  mayExceedMillLimit: ({ highest = unknown, limit = unknown }, { quantity }) =>
    `Uncertainty included, the pull on the wheel may reach ${quantity(highest, 'force')}; the mill’s maker allows ${quantity(limit, 'force')}.`,
  torqueFalls: ({ row = unknown }) =>
    `From row ${row + 1} on the torque falls. Readings taken while loosening show another torque for the same tension: take the series again, always tightening.`,
  readingsAboveAllowed: ({ stress = unknown, allowed = unknown }, { quantity }) =>
    `These readings already went to ${quantity(stress, 'stress')}; the makers allow ${quantity(allowed, 'stress')}.`,
  wayAboveAllowed: ({ stress = unknown, allowed = unknown }, { quantity }) =>
    `STOP. A way that gives ${quantity(stress, 'stress')} is not to be used: the makers allow ${quantity(allowed, 'stress')}.`,
  wayBeyondReadings: ({ torque = unknown, topTorque = unknown }, { quantity }) =>
    `A way at ${quantity(torque, 'torque')} is above your highest reading, ${quantity(topTorque, 'torque')}. Measure up to it.`,
};

function isSpoken(code: WorksheetGuardCode): code is SpokenCode {
  return Object.hasOwn(SENTENCES, code);
}

/** The sentence for a guard; one about the other band says so. */
export function guardSentence({ code, values, inputs }: WorksheetGuard, shown: Shown): string {
  const sentence = isSpoken(code)
    ? SENTENCES[code](values, shown)
    : refusalSentence({ code, values }, shown);
  return inputs[0]?.startsWith('otherBand') ? `The other band: ${sentence}` : sentence;
}
