/**
 * What is said when the lid is lifted.
 * Units: SI in (Pa, N·m); text in the reader's units.
 */
import type { Cause, Lifted, Plucked, Slip, Stage } from '../../core/bench.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { stressText } from './account-words.ts';
import { say } from './say.ts';

/** What each cause is called. */
export const CAUSE_NAMES: Readonly<Record<Cause, string>> = {
  scatter: 'Reading, scatter and rounding',
  toe: 'The band straightens',
  warmed: 'A bar warmed by hands',
  slipped: 'A clamp that slipped',
  noLoad: 'The no-load torque',
  firstReading: 'The zero set too early: the first row taken for it',
  oneStrand: 'One strand counted for two',
  label: 'The label’s section, not the band’s',
  misread: 'A reading off the mark',
  turns: 'A whole turn lost or added',
  sum: 'From the rows to your answer',
};

const CODES: Readonly<Record<string, string>> = {
  tooFewReadings:
    'they are too few: it wants six torques above the no-load torque, three in the upper half',
  readingFalls: 'the dial seems to run the other way',
  zeroTooVague: 'they are too uneven to show where the stretching begins',
  tooMuchStretch: 'they say more stretch than steel can spring back from',
};

const percent = (share: number, system: UnitSystem) => say(Math.abs(share), 'percent', system, 2);

const CLOSE = 0.05; // of the truth: as well as shop tools do

/** The answer beside the truth. */
export function verdict({ truth, topTorque }: Lifted, answer: number, system: UnitSystem): string {
  const [is, yours] = [truth, answer].map((stress) => stressText(stress, system));
  const off = answer / truth - 1;
  const truthIs = `At ${say(topTorque, 'torque', system)} the band really feels ${is}.`;
  if (Math.abs(off) <= CLOSE)
    return `${truthIs} Your ${yours} is within ${percent(Math.max(Math.abs(off), 0.001), system)}: as close as shop tools get.`;
  return `${truthIs} Your ${yours} is ${percent(off, system)} too ${off > 0 ? 'high' : 'low'}.`;
}

/** `1`, `1 and 3`, `1, 2 and 3`. */
const listed = (numbers: readonly number[]): string =>
  numbers.length < 2
    ? numbers.join('')
    : `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;

const named = (one: string, numbers: readonly number[]) =>
  `${one}${numbers.length > 1 ? 's' : ''} ${listed(numbers)}`;

/** Which series a stage is about; nothing where it is about all of them. */
export const seriesInWords = ({ series }: Pick<Stage, 'series'>): string =>
  series.length === 0 ? '' : `, series ${listed(series.map((attempt) => attempt + 1))}`;

/** What the learner's rows measure; where they give no stress, why, and which rows are wrong. */
export function rowsInWords(
  lifted: Lifted,
  numbers: readonly number[],
  system: UnitSystem,
): string {
  const { measured, truth, refusal, stages } = lifted;
  if (measured) {
    const [low, high] = [Math.max(0, measured.low), measured.high];
    const holds = low <= truth && truth <= high;
    const [from, to] = [low, high].map((stress) => stressText(stress, system));
    return `The worksheet finds ${from} to ${to} in your rows. The truth is ${holds ? 'inside' : 'outside'}.`;
  }
  const why = CODES[refusal?.code ?? ''] ?? 'something is missing';
  const wrong = stages.flatMap(({ rows }) => rows.map(({ at }) => numbers[at] as number));
  const rows = [...wrong].sort((a, b) => a - b);
  const spoilt =
    rows.length === 0
      ? ''
      : ` Written wrong: ${named('row', rows)}. See below what the dial showed.`;
  return `The worksheet finds no stress in your rows: ${why}. Any number it shows is its prediction from the screw, without your rows.${spoilt}`;
}

const NOT_MADE: Readonly<Partial<Record<Cause, string>>> = {
  turns: 'no turn of the hand was lost',
  misread: 'no row was misread',
  slipped: 'no clamp slipped',
  warmed: 'the bar stayed cool',
  noLoad: 'the no-load torque was right',
};

/** What did not happen, in one sentence. */
export function unmadeInWords(stages: readonly Stage[]): string {
  const hasTurns = stages.some(({ cause, isMade }) => cause === 'turns' && isMade);
  const words = stages.flatMap(({ cause, isMade }) => {
    if (isMade) return [];
    return (cause === 'misread' && hasTurns ? 'no other row was misread' : NOT_MADE[cause]) ?? [];
  });
  if (words.length === 0) return '';
  const [first = '', ...others] = words;
  return `${[first[0]?.toUpperCase() + first.slice(1), ...others].join(', ')}.`;
}

/** Where a slip in working out would have led. */
export function slipInWords(slip: Slip, stress: number | undefined, system: UnitSystem): string {
  return stress === undefined
    ? `${CAUSE_NAMES[slip]}: no stress`
    : `${CAUSE_NAMES[slip]}: ${stressText(stress, system)}`;
}

/** What the note said, beside the truth, and with the dial. */
export function noteInWords(
  { torque, truth, low, high, together }: Plucked,
  system: UnitSystem,
): string {
  const text = (stress: number) => stressText(stress, system);
  const note = `The note at ${say(torque, 'torque', system)} says ${text(low)} to ${text(high)}; the band feels ${text(truth)}.`;
  return together
    ? `${note} Dial and note together: ${text(together.low)} to ${text(together.high)}.`
    : note;
}
