/**
 * Everything the worksheet wants told, whether or not its results are there: stops first.
 * Units: SI only.
 * Source: definition.
 */

import type { TensionWindow } from '../../tightness.ts';
import type { Worksheet } from '../inputs.ts';
import { isUsable } from '../known-inputs.ts';
import type { DialDirection } from '../measure/dial-direction.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { SeriesResult } from '../measure/readings.ts';
import type { Verdict } from '../measure/verdict.ts';
import type { ZeroResult } from '../measure/zero.ts';
import type { Outcome } from '../outcome.ts';
import { farBeyondReadings, highStart } from '../own-assumptions.ts';
import type { WorksheetPath } from '../path.ts';
import type { AgreementResult } from './agreement.ts';
import type { AllowedLoad } from './allowed-load.ts';
import { isApart } from './apart.ts';
import type { BandByReadings } from './band-by-readings.ts';
import type { BandSetting } from './bands.ts';
import { mayExceed } from './held.ts';
import { readingsBeyondAllowed, useBeyondAllowed, waysBeyond } from './limits.ts';
import type { RailsResult, WorksheetGuard } from './rails.ts';
import { rowsGuard, seriesGuards } from './row-guards.ts';
import type { SettingResult } from './setting.ts';
import type { TurnsResult } from './turns.ts';
import type { WayResult } from './ways.ts';

/** What the guards look at. */
export interface Guarded {
  readonly dialRuns: DialDirection | undefined;
  readonly series: Outcome<SeriesResult>;
  readonly zero: Outcome<ZeroResult>;
  readonly verdict: Verdict;
  readonly turns: Outcome<TurnsResult>;
  readonly setting: Outcome<SettingResult>;
  readonly rails: Outcome<RailsResult>;
  readonly bands: readonly BandSetting[];
  readonly measured: Outcome<MeasuredResult>;
  readonly agreement: Outcome<AgreementResult>;
  readonly ways: readonly WayResult[];
  readonly allowed: number | undefined; // Pa, by both makers
  readonly allowedLoad?: AllowedLoad | undefined; // the same as a load
  readonly room: Outcome<TensionWindow>; // the window of tension
}

const order = { stop: 0, warn: 1, note: 2 } as const;

/** All guards, stops first; what several bands touch alike is told for each. */
export function worksheetGuards(worksheet: Worksheet, guarded: Guarded): readonly WorksheetGuard[] {
  const { measured, ways, allowed } = guarded;
  const isLimited = (rails: Outcome<RailsResult>, place?: number) =>
    rails.ready && mayExceed(rails.found, place);
  const carried = [
    ...(guarded.setting.ready && !isLimited(guarded.rails) ? ofSetting(guarded.setting) : []),
    ...guarded.bands.flatMap(({ byReadings, rails }, place) =>
      byReadings.ready && !isLimited(rails, place) ? ofBand(byReadings, place) : [],
    ),
  ];
  const found = [
    ...ofRails([guarded.rails, ...guarded.bands.map(({ rails }) => rails)]),
    ...ofDial(guarded.dialRuns),
    ...(guarded.series.ready ? seriesGuards(guarded.series, worksheet) : []),
    ...(guarded.zero.ready ? ofZero(guarded.zero) : []),
    ...ofVerdict(guarded.verdict),
    ...(guarded.turns.ready ? ofTurns(guarded.turns) : []),
    ...(isApart(guarded) ? ofDisagreement(measured) : carried),
    ...(guarded.room.ready ? ofWindow(guarded.room, worksheet) : []),
    ...readingsBeyondAllowed(measured, allowed),
    ...useBeyondAllowed(worksheet, guarded.allowedLoad),
    ...waysBeyond(worksheet, ways, measured, allowed),
  ];
  return found.sort((a, b) => order[a.level] - order[b.level]);
}

/** What the rails of all bands find; what is about the screw, whatever the band, is told once. */
function ofRails(rails: readonly Outcome<RailsResult>[]): readonly WorksheetGuard[] {
  const found = rails.flatMap((each) => (each.ready ? each.found : []));
  const screw = found.find(({ code }) => code === 'mayBackOff');
  return found.filter((guard) => guard === screw || guard.code !== 'mayBackOff');
}

/** Where the two do not agree, no one is sent above the readings: one of them is wrong, and it may be the lower. */
function ofDisagreement(measured: Outcome<MeasuredResult>): WorksheetGuard[] {
  if (!measured.ready) return [];
  const values = { topTorque: measured.topTorque };
  return [{ code: 'apart', level: 'warn', values, inputs: ['readings', 'tensioner'] }];
}

/** A target beyond an edge; what a maker allows is told by a rail of its own. */
function ofWindow({ low, high }: TensionWindow, worksheet: Worksheet): WorksheetGuard[] {
  const target = worksheet.target.stress;
  if (!isUsable(target)) return [];
  const inputs = ['target.stress'] as const;
  if (high && target > high.stress && (high.cause === 'life' || high.cause === 'yield')) {
    const { lifeKept } = worksheet.demands;
    const isOfLife = high.cause === 'life'; // a wish, and a maker's number comes first
    const values = { edge: high.stress, ...(isOfLife && lifeKept && { lifeKept }) };
    return [{ code: 'aboveWindow', level: isOfLife ? 'note' : 'warn', values, inputs }];
  }
  if (low && target < low.stress)
    return [{ code: 'belowWindow', level: 'warn', values: { edge: low.stress }, inputs }];
  return [];
}

function ofDial(dialRuns: DialDirection | undefined): WorksheetGuard[] {
  if (!dialRuns || dialRuns.isSaid) return [];
  const values = { backwards: Number(dialRuns.backwards) };
  return [{ code: 'dialDirectionTaken', level: 'note', values, inputs: ['rig.dialRunsBackwards'] }];
}

function ofZero(zero: ZeroResult): WorksheetGuard[] {
  const { low, high } = zero;
  const warned = zero.warnings.map((code): WorksheetGuard => {
    return { code, level: 'warn', values: { low, high }, inputs: ['readings'] };
  });
  return [
    ...warned,
    ...rowsGuard('rowsBelowDrag', zero.belowDrag),
    ...rowsGuard('rowsWithoutTorque', zero.withoutTorque),
  ];
}

/** A bend that lies below the lowest reading cannot be seen. */
function ofVerdict({ reasons }: Verdict): WorksheetGuard[] {
  if (!reasons.includes('startsHigh')) return [];
  return [
    { code: 'startsHigh', level: 'warn', values: { share: highStart }, inputs: ['readings'] },
  ];
}

function ofTurns({ fewerTurnsThanBand, totalStiffness }: TurnsResult): WorksheetGuard[] {
  if (!fewerTurnsThanBand) return [];
  const values = { totalStiffness };
  return [{ code: 'fewerTurnsThanBand', level: 'warn', values, inputs: ['readings'] }];
}

/** A line carried on a little is said in passing; one carried on by a quarter is a matter for caution. */
function carriedOn(
  torque: number,
  topTorque: number,
  inputs: readonly WorksheetPath[],
): WorksheetGuard {
  const level = torque > farBeyondReadings * topTorque ? 'warn' : 'note';
  return { code: 'beyondReadings', level, values: { torque, topTorque }, inputs };
}

function ofSetting({ beyondReadings, torque, operands }: SettingResult): WorksheetGuard[] {
  if (!beyondReadings) return [];
  return [carriedOn(torque, operands.topTorque, ['readings', 'target.stress'])];
}

function ofBand(
  { torque, topTorque, beyondReadings }: BandByReadings,
  place: number,
): WorksheetGuard[] {
  if (!beyondReadings) return [];
  return [carriedOn(torque, topTorque, [`bands.${place}.targetStress`, 'readings'])];
}
