/**
 * What stands on the setting card: settings, ways, warnings and what they hold with, in the reader's units and words.
 * Units: SI in, the reader's out.
 */
import {
  type BandSetting,
  heldBack,
  isAboutBand,
  isApart,
  type Worksheet,
  type WorksheetGuard,
  type WorksheetResults,
} from '../../core/worksheet.ts';
import { apartSentence } from '../compare/apart-words.ts';
import type { Shown } from '../state/shown.ts';
import { guardSentence } from '../words/guard-words.ts';
import type { LoadWords } from '../words/load-words.ts';
import { bandName, inchPounds, notYet, reachWords } from '../words/setting-words.ts';

/** How far a torque on the card can be relied on. */
export type Trust = 'measured' | 'rough' | 'provisional' | 'not yet' | 'calculated';

/** One torque of the card. */
export interface CardSetting {
  readonly trust: Trust;
  readonly torque: string;
  readonly inchPounds: string | undefined; // the same, where wrenches have them
  readonly needs: string; // the torques that the target may need
  readonly gives: string; // the stress
  readonly dial: string | undefined; // how far it should move
}

type Settings = Pick<BandSetting, 'byReadings' | 'byScrew' | 'stretch'>;

type Judged = Pick<WorksheetResults, 'agreement' | 'verdict' | 'guards'>;

/** How far the torque can be relied on: not at all yet where it is held back. */
function trustIn(byReadings: Settings['byReadings'], results: Judged, place?: number): Trust {
  if (!byReadings.ready) return isApart(results) ? 'not yet' : 'calculated';
  if (heldBack(results, { ...byReadings, place })) return 'not yet';
  if (byReadings.beyondReadings) return 'provisional';
  return results.verdict.grade === 'rough' ? 'rough' : 'measured';
}

/** The best torque there is, or none: by readings unless a rail stops it, else by the screw alone. */
export function cardSetting(
  { byReadings, byScrew, stretch }: Settings,
  shown: Shown,
  results: Judged,
  place?: number,
): CardSetting | undefined {
  const best = byReadings.ready ? byReadings : byScrew;
  if (!best.ready) return undefined;
  return {
    trust: trustIn(byReadings, results, place),
    torque: shown.quantity(best.torque, shown.load.name),
    inchPounds: inchPounds(best.torque, shown),
    ...reachWords(best, shown),
    dial: stretch.ready ? shown.quantity(stretch.stretch, 'stretch') : undefined,
  };
}

/** The card's own torque. */
export const ownSetting = (results: WorksheetResults, shown: Shown): CardSetting | undefined =>
  cardSetting(
    {
      byReadings: results.setting as BandSetting['byReadings'],
      byScrew: results.theorySetting,
      stretch: results.expectedStretch,
    },
    shown,
    results,
  );

/** What to do before the card's own torque is relied on; nothing where it may be set as it is. */
export function firstWords(
  { trust, torque }: Pick<CardSetting, 'trust' | 'torque'>,
  results: Judged & Pick<WorksheetResults, 'measured' | 'setting'>,
  shown: Shown,
): string | undefined {
  const { measured, setting } = results;
  const held = heldBack(results, { beyondReadings: setting.ready && setting.beyondReadings });
  if (trust === 'not yet' && held && held.by !== 'apart') return notYet(held, shown);
  if (trust === 'not yet')
    return measured.ready ? apartSentence(measured.topTorque, shown) : undefined;
  if (trust === 'rough') return 'Rough: go by the range, and measure once more.';
  if (trust === 'provisional') return `Provisional: measure up to ${torque} first.`;
  return trust === 'calculated'
    ? `Calculated from the ${shown.load.by} alone: measure once to be sure.`
    : undefined;
}

/** One way of setting: what it is called, at which torque or pressure, and what it comes to. */
export interface CardLine {
  readonly name: string;
  readonly at: string; // empty where it has none
  readonly value: string;
}

/** Another band, with its setting unless a rail stops it. */
export interface CardBand {
  readonly name: string;
  readonly size: string; // of its body, width × thickness
  readonly setting: CardSetting | undefined;
}

type BandSize = Pick<Worksheet['bands'][number], 'bodyWidth' | 'thickness'>;

const sizeWords = (size: BandSize | undefined, { quantity }: Shown): string =>
  size?.bodyWidth === undefined || size.thickness === undefined
    ? ''
    : `${quantity(size.bodyWidth, 'length')} × ${quantity(size.thickness, 'thickness')}`;

/** The other bands that have a torque, or that a rail stops; a torque of one band on another would be dangerous. */
export function bandLines(
  results: WorksheetResults,
  shown: Shown,
  sizes: readonly BandSize[],
): readonly CardBand[] {
  return results.bands.flatMap((band, place) => {
    const setting = cardSetting(band, shown, results, place);
    const isStopped = band.rails.ready && band.rails.found.some(({ level }) => level === 'stop');
    return setting || isStopped
      ? [{ name: bandName(band, place), size: sizeWords(sizes[place], shown), setting }]
      : [];
  });
}

/** One line for each way whose stress is known; by its own readings where it has them. */
export function wayLines(
  results: WorksheetResults,
  shown: Shown,
  torques: readonly (number | undefined)[] = [],
): readonly CardLine[] {
  return results.ways.flatMap(({ name, fromTorque, fromReadings }, place) => {
    const isContradicted = !fromReadings.ready && fromReadings.refusal !== undefined;
    const known = fromReadings.ready ? fromReadings : fromTorque;
    if (!known.ready || isContradicted) return [];
    const isForbidden = results.guards.some(
      ({ code, inputs }) => code === 'wayAboveAllowed' && inputs.includes(`ways.${place}`),
    );
    const stress = shown.plusMinus(known.stress, known.expandedUncertainty, 'stress');
    const torque = torques[place];
    const at = torque === undefined ? '' : ` at ${shown.quantity(torque, shown.load.name)}`;
    const called = name || `Way ${place + 1}`;
    return [{ name: called, at, value: isForbidden ? 'do not use' : stress }];
  });
}

/** Notes of the sheet that bear on how far the setting can be trusted. */
const ALWAYS_SAID: ReadonlySet<string> = new Set([
  'outsideCommonPractice',
  'bendingNotJudged',
  'rowsStruck',
  'wideInterval',
  'wideUncertainty',
  'rowsStruck',
]);

const SHORT_NAME = 24; // letters: a longer one is told by its number

/** One sentence about all other bands that the sheet warns of. */
function warnedBands({ bands }: WorksheetResults): readonly string[] {
  const warned = bands.flatMap((band, place) => {
    const isWarned = band.rails.ready && band.rails.found.some(({ level }) => level !== 'note');
    const isShort = band.name.length <= SHORT_NAME;
    return isWarned ? [bandName(isShort ? band : { name: '' }, place)] : [];
  });
  if (warned.length === 0) return [];
  return [`Read the sheet’s warnings before you set these: ${warned.join(', ')}.`];
}

/** Which way the number on the dial goes; empty while nobody knows. */
export function dialRunsWords(backwards: boolean | undefined): string {
  if (backwards === undefined) return '';
  return backwards ? 'falls as it stretches' : 'rises as it stretches';
}

/** What the makers allow, as far as it is known. */
export const limitWords = (
  { makerLimitStress: stress, makerLimitWheelForce: force }: Worksheet['target'],
  { quantity }: Shown,
): string =>
  [
    ...(stress === undefined ? [] : [quantity(stress, 'stress')]),
    ...(force === undefined ? [] : [`${quantity(force, 'force')} on the wheel`]),
  ].join(', ');

/** Every warning of the sheet, each once, but for what the card's own torque says first: it must not look surer than the sheet. */
export function cardWarnings(results: WorksheetResults, shown: Shown): readonly string[] {
  const { guards, setting } = results;
  const isSaidFirst = ownSetting(results, shown)?.trust === 'not yet';
  const own = guards.filter(
    (guard) => isAboutBand(guard) && !(isSaidFirst && guard.code === 'apart'),
  );
  const isSaid = ({ level, code }: WorksheetGuard) =>
    level !== 'note' || (ALWAYS_SAID.has(code) && (setting.ready || code !== 'wideUncertainty'));
  const said = own.filter(isSaid).map((guard) => guardSentence(guard, shown));
  return [...new Set([...said, ...warnedBands(results)])];
}

/** How sure the card is, in as few words as a phone's card has room for; a prediction so wide that agreement tests little is no support. */
export function verdictWords(
  { verdict, agreement, theorySetting }: WorksheetResults,
  testsLittle: boolean,
): string {
  if (verdict.grade === 'none') return 'the readings give no stress';
  if (verdict.grade === 'waiting') return theorySetting.ready ? 'calculated, not measured' : '';
  const measured = verdict.grade === 'rough' ? 'measured, roughly' : 'measured';
  if (!agreement.ready) return measured;
  if (testsLittle) return `${measured}; theory too vague`;
  return agreement.verdict === 'agree' ? `${measured}; theory agrees` : 'not sure yet';
}

/** Why the card is empty: stopped by a rail, or not there yet. */
export function emptyWords(
  { setting, theorySetting }: WorksheetResults,
  { name }: LoadWords,
): string {
  const isStopped = [setting, theorySetting].some((each) => !each.ready && each.refusal);
  return isStopped
    ? 'No setting is given.'
    : `No setting yet. The card fills in once part 8 has a ${name}.`;
}
