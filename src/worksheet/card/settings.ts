/**
 * The torques of the setting card: each band's, how far it can be relied on, and what to do before it is.
 * Units: SI in, the reader's out.
 */
import {
  type BandSetting,
  type HeldBack,
  heldBack,
  isApart,
  type Worksheet,
  type WorksheetResults,
} from '../../core/worksheet.ts';
import { THIN_SPACE } from '../../units/format-number.ts';
import { apartSentence } from '../compare/apart-words.ts';
import type { Shown } from '../state/shown.ts';
import { bandName, inOtherUnit, notYet, reachWords } from '../words/setting-words.ts';
import { type LimitRow, limitRow } from './limits.ts';

/** How far a torque on the card can be relied on. */
export type Trust = 'measured' | 'rough' | 'provisional' | 'not yet' | 'calculated';

/** One torque of the card. */
export interface CardSetting {
  readonly trust: Trust;
  readonly torque: string;
  readonly inOtherUnit: string | undefined; // the same, where wrenches have them
  readonly needs: string; // the torques that the target may need
  readonly gives: string; // the stress
  readonly dial: string | undefined; // how far it should move
  readonly over: string | undefined; // what length of the band
  readonly isRead: boolean; // by readings, else calculated
  readonly first: string | undefined; // what to do before it is relied on, or that it is not to be used
}

/** Whether the torque may be set as it is, with more or less care. */
export const isForSetting = ({ trust }: Pick<CardSetting, 'trust'>): boolean =>
  trust !== 'provisional' && trust !== 'not yet';

/** A band, with its setting unless a rail stops it. */
export interface CardBand {
  readonly name: string; // none of the band that was measured
  readonly size: string; // of its body, width × thickness
  readonly setting: CardSetting | undefined;
  readonly limit: LimitRow | undefined; // what the makers allow it
}

type Settings = Pick<BandSetting, 'byReadings' | 'byScrew' | 'stretch'>;
type Judged = Pick<WorksheetResults, 'agreement' | 'verdict' | 'guards' | 'measured'>;

interface Judgement {
  readonly trust: Trust;
  readonly held: HeldBack | undefined;
}

/** How far the torque can be relied on: not at all yet where it is held back. */
function judged(byReadings: Settings['byReadings'], results: Judged, place?: number): Judgement {
  const beyondReadings = byReadings.ready && byReadings.beyondReadings;
  const held = heldBack(results, { beyondReadings, place });
  if (!byReadings.ready) return { trust: isApart(results) ? 'not yet' : 'calculated', held };
  if (held) return { trust: 'not yet', held };
  if (beyondReadings) return { trust: 'provisional', held };
  return { trust: results.verdict.grade === 'rough' ? 'rough' : 'measured', held };
}

const NOT_NOW = 'Do not use yet.'; // a provisional torque, which stands among the facts

/** What to do first with the band that was measured; nothing where its torque may be set as it is. */
function ownFirst(
  { trust, held }: Judgement,
  { measured }: Judged,
  shown: Shown,
): string | undefined {
  if (trust === 'not yet' && held && held.by !== 'apart') return notYet(held, shown);
  if (trust === 'not yet')
    return measured.ready ? apartSentence(measured.topTorque, shown) : undefined;
  if (trust === 'rough') return 'Rough: go by the range, and measure once more.';
  if (trust === 'provisional') return NOT_NOW;
  return trust === 'calculated'
    ? `Calculated from the ${shown.load.by} alone: measure once to be sure.`
    : undefined;
}

/** The same of another band, in short: what holds for the whole mill is said of the first. */
function otherFirst({ trust, held }: Judgement, shown: Shown): string | undefined {
  if (trust === 'not yet') return held ? notYet(held, shown) : 'Not yet.';
  if (trust === 'rough') return 'Rough: go by the range.';
  if (trust === 'provisional') return NOT_NOW;
  return trust === 'calculated' ? 'Calculated, not measured.' : undefined;
}

/** The better of two settings: by readings unless a rail stops it, else by the screw alone. */
const best = ({ byReadings, byScrew }: Pick<Settings, 'byReadings' | 'byScrew'>) =>
  byReadings.ready ? byReadings : byScrew;

/** The best torque there is, or none. */
export function cardSetting(
  settings: Settings,
  shown: Shown,
  results: Judged,
  place?: number,
): CardSetting | undefined {
  const { byReadings, stretch } = settings;
  const set = best(settings);
  if (!set.ready) return undefined;
  const judgement = judged(byReadings, results, place);
  return {
    trust: judgement.trust,
    torque: shown.quantity(set.torque, shown.load.name),
    inOtherUnit: inOtherUnit(set.torque, shown),
    ...reachWords(set, shown),
    dial: stretch.ready ? shown.quantity(stretch.stretch, 'stretch') : undefined,
    over: stretch.ready ? shown.quantity(stretch.operands.gaugeLength, 'length') : undefined,
    isRead: byReadings.ready,
    first: place === undefined ? ownFirst(judgement, results, shown) : otherFirst(judgement, shown),
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

type BandSize = Pick<Worksheet['bands'][number], 'bodyWidth' | 'thickness'>;

const sizeWords = (size: BandSize | undefined, { quantity }: Shown): string =>
  size?.bodyWidth === undefined || size.thickness === undefined
    ? ''
    : `${quantity(size.bodyWidth, 'length')} back to gullet × ${quantity(size.thickness, 'thickness')}`;

type Targets = Pick<Worksheet, 'bands' | 'target'>;

/** The band that was measured; its setting is not there where a rail stops it, nor before there is one. */
export function ownBand(results: WorksheetResults, shown: Shown, { target }: Targets): CardBand {
  const { setting, allowedLoad: allowed } = results;
  return {
    name: '',
    size: results.section.ready ? sizeWords(results.section.operands, shown) : '',
    setting: ownSetting(results, shown),
    limit: limitRow(target, { allowed, set: setting.ready ? setting.torque : undefined }, shown),
  };
}

/** The other bands that have a torque, or that a rail stops; a torque of one band on another would be dangerous. */
export function bandLines(
  results: WorksheetResults,
  shown: Shown,
  { bands: sizes, target }: Targets,
): readonly CardBand[] {
  return results.bands.flatMap((band, place) => {
    const setting = cardSetting(band, shown, results, place);
    const isStopped = band.rails.ready && band.rails.found.some(({ level }) => level === 'stop');
    if (!setting && !isStopped) return [];
    const { name, allowedLoad: load } = band;
    const set = best(band);
    const isSet = !setting || isForSetting(setting); // else a limit would read as leave
    const isToldLimit = isSet && set.ready && load !== undefined;
    const limit = isToldLimit
      ? limitRow(target, { allowed: { load }, set: set.torque }, shown)
      : undefined;
    return [
      { name: bandName({ name }, place), size: sizeWords(sizes[place], shown), setting, limit },
    ];
  });
}

/** A written quantity as its number and its unit, which is set in smaller type. */
export function numberAndUnit(text: string): readonly [number: string, unit: string] {
  const at = text.lastIndexOf(THIN_SPACE);
  return at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at)];
}
