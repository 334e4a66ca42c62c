/**
 * Other bands for the worksheet's mill, each with its settings, what dial and turns should then show, and its rails.
 * Units: SI only (N·m, Pa, m).
 * Source: definition.
 */
import type { Worksheet, WorksheetBandOther } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import { type Outcome, ready, whenReady } from '../outcome.ts';
import type { Chain } from '../predict/chain.ts';
import { worksheetBody } from '../predict/section.ts';
import { worksheetTheory } from '../predict/theory.ts';
import { allowedLoad } from './allowed-load.ts';
import {
  allowedByReadings,
  type BandByReadings,
  bandByReadings,
  type OwnResults,
} from './band-by-readings.ts';
import { allowedStress } from './limits.ts';
import { type RailsResult, targetRails, withinRails } from './rails.ts';
import { type ExpectedStretchResult, worksheetExpectedStretch } from './setting.ts';
import { type TheorySettingResult, worksheetTheorySetting } from './theory-setting.ts';
import type { TurnsResult } from './turns.ts';
import { type TurnsSetting, turnsSetting } from './turns-setting.ts';

/** One other band; each result waits on its own, and a rail stops both torques. */
export interface BandSetting {
  readonly name: string;
  readonly byReadings: Outcome<BandByReadings>;
  readonly byScrew: Outcome<TheorySettingResult>;
  readonly stretch: Outcome<ExpectedStretchResult>;
  readonly turns: Outcome<TurnsSetting>;
  readonly rails: Outcome<RailsResult>;
  readonly allowedLoad: number | undefined; // N·m or Pa: the most that the measured band's limits would let it have
}

/** What the mill has shown with the band that was measured. */
export interface ShownByOwnBand extends Omit<OwnResults, 'section'> {
  readonly turns: Outcome<TurnsResult>;
}

const UNREAD = { ready: false, waitsFor: [] } as const;

/** Every other band of the worksheet, in its order. */
export function worksheetBands(
  worksheet: Worksheet,
  chain: Chain,
  shown: ShownByOwnBand,
): readonly BandSetting[] {
  return worksheet.bands.map((band, place) => bandSetting(worksheet, chain, shown, band, place));
}

function bandSetting(
  worksheet: Worksheet,
  chain: Chain,
  { turns, ...shown }: ShownByOwnBand,
  band: WorksheetBandOther,
  place: number,
): BandSetting {
  const input = `bands.${place}.targetStress` as const;
  const target = knownInputs({ stress: [input, band.targetStress ?? worksheet.target.stress] });
  const section = worksheetBody(`bands.${place}`, band, worksheet.band.thicknessFrom);
  const theory = worksheetTheory(worksheet, chain.screw, section, chain.strands);
  const own = { section: chain.section, ...shown };
  const byReadings = bandByReadings(target, section, own);
  const byScrew = worksheetTheorySetting(theory, target);
  const judged = whenReady({ target, section }, ({ target: { stress } }) => ready({ stress }));
  const context = { ...chain, section };
  const rails = targetRails(worksheet, { target: judged, input }, context, [byReadings, byScrew]);
  const setting = withinRails(byReadings, rails);
  const allowed = allowedStress(worksheet, context);
  const needs = { setting, turns, measured: shown.measured, own: chain.section, other: section };
  return {
    name: band.name,
    byReadings: setting,
    byScrew: withinRails(byScrew, rails),
    stretch: worksheetExpectedStretch(worksheet, target),
    turns: turnsSetting(needs),
    rails,
    allowedLoad:
      allowed &&
      (allowedByReadings(allowed, section, own) ??
        allowedLoad(allowed, { theory, measured: UNREAD })?.load),
  };
}
