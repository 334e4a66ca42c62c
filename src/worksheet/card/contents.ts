/**
 * What stands on the setting card beside its torques: ways, warnings and what they hold with, in the reader's units and words.
 * Units: SI in, the reader's out.
 */
import {
  type BandSetting,
  isAboutBand,
  type WorksheetGuard,
  type WorksheetResults,
} from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';
import { guardSentence } from '../words/guard-words.ts';
import type { LoadWords } from '../words/load-words.ts';
import { bandName } from '../words/setting-words.ts';
import { ownSetting } from './settings.ts';

/** One way of setting: what it is called, at which torque or pressure, and what it comes to. */
export interface CardLine {
  readonly name: string;
  readonly at: string; // empty where it has none
  readonly value: string;
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
]);

const SHORT_NAME = 24; // letters
const FEW = 2;

/** A band's name as it stands within a sentence; where it has none, or a long one, what it is called otherwise. */
export const shortName = (name: string, otherwise: string): string =>
  name !== '' && name.length <= SHORT_NAME ? name : otherwise;

/** What another band is called within a sentence of the card. */
export const cardName = ({ name }: Pick<BandSetting, 'name'>, place: number): string =>
  shortName(name, bandName({ name: '' }, place));

/** What the band on the mill is called where it has no name and others stand beside it. */
export const ownBandCalled = ({ measured }: Pick<WorksheetResults, 'measured'>): string =>
  measured.ready ? 'measured band' : 'band on the mill';

const OF_THE_SCREW = 'mayBackOff'; // whatever the band
const OF_LIFE = 'nearYield'; // of a band in use

/** What the sheet warns of each other band; where those are many, one sentence that names them. */
function warnedBands({ bands, guards }: WorksheetResults, shown: Shown): readonly string[] {
  const isSaid = ({ code }: WorksheetGuard) =>
    code === OF_THE_SCREW && guards.some((own) => own.code === code);
  const warned = bands.flatMap((band, place) => {
    const all = band.rails.ready ? band.rails.found : [];
    const isForLater = band.byReadings.ready && band.byReadings.beyondReadings; // not to be used yet
    const found = all.filter(
      (guard) =>
        guard.level !== 'note' && !isSaid(guard) && !(isForLater && guard.code === OF_LIFE),
    );
    return found.length > 0 ? [{ name: cardName(band, place), found }] : [];
  });
  const names = bands.map(cardName);
  if (warned.length <= FEW)
    return warned.flatMap(({ found }) => found.map((guard) => guardSentence(guard, shown, names)));
  const all = warned.map(({ name }) => name).join(', ');
  return [`Read the sheet’s warnings before you set these: ${all}.`];
}

/**
 * How far the dial moves before the band stretches, from the first reading of the series on; nothing where that may be
 * no way at all, nor where each of several series has its own.
 */
export function slackSeen(
  { zero }: Pick<WorksheetResults, 'zero'>,
  shown: Shown,
): string | undefined {
  if (!zero.ready || zero.zeros.length > 1 || zero.low <= 0) return undefined;
  return shown.quantity(zero.zero, 'stretch');
}

/** Which way the number on the dial goes, and what of that is slack at first; empty while nobody knows the way. */
export function dialRunsWords(backwards: boolean | undefined, slack: string | undefined): string {
  if (backwards === undefined) return '';
  const way = backwards ? 'falls' : 'rises';
  return slack === undefined ? `${way} as it stretches` : `${way}; the first ${slack} was slack`;
}

/** What is about the day of the measurement, and no longer true when the card hangs. */
const OF_THE_DAY: ReadonlySet<string> = new Set(['readingsAboveAllowed', 'useMayExceed']);

/** Every warning of the sheet, each once, but for what the card's own torque says first: it must not look surer than the sheet. */
export function cardWarnings(results: WorksheetResults, shown: Shown): readonly string[] {
  const { guards, setting } = results;
  const isSaidFirst = ownSetting(results, shown)?.trust === 'not yet';
  const own = guards.filter(
    (guard) =>
      isAboutBand(guard) && !OF_THE_DAY.has(guard.code) && !(isSaidFirst && guard.code === 'apart'),
  );
  const isSaid = ({ level, code }: WorksheetGuard) =>
    level !== 'note' || (ALWAYS_SAID.has(code) && (setting.ready || code !== 'wideUncertainty'));
  const said = own.filter(isSaid).map((guard) => guardSentence(guard, shown));
  return [...new Set([...said, ...warnedBands(results, shown)])];
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
  if (testsLittle) return measured;
  return agreement.verdict === 'agree' ? `${measured}; calculation agrees` : 'not sure yet';
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
