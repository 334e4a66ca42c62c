/**
 * The deciding side of the worksheet, composed: the settings, and the rails that may stop them.
 * Units: SI only (N·m, Pa, m).
 * Source: definition.
 */

import type { Worksheet } from '../inputs.ts';
import type { Measurement } from '../measure/measurement.ts';
import type { Outcome } from '../outcome.ts';
import type { Chain } from '../predict/chain.ts';
import { type BandSetting, worksheetBands } from './bands.ts';
import type { EfficiencyResult } from './efficiency.ts';
import { type RailsResult, targetRails, withinRails } from './rails.ts';
import {
  type ExpectedStretchResult,
  knownTarget,
  type SettingResult,
  worksheetExpectedStretch,
  worksheetSetting,
} from './setting.ts';
import { type TheorySettingResult, worksheetTheorySetting } from './theory-setting.ts';
import type { TurnsResult } from './turns.ts';
import { type TurnsSetting, turnsSetting } from './turns-setting.ts';

/** The settings, each refused where a rail stops it, and the rails of the target. */
export interface Decision {
  readonly setting: Outcome<SettingResult>;
  readonly theorySetting: Outcome<TheorySettingResult>;
  readonly expectedStretch: Outcome<ExpectedStretchResult>;
  readonly turnsSetting: Outcome<TurnsSetting>;
  readonly bands: readonly BandSetting[];
  readonly rails: Outcome<RailsResult>;
}

/** What the mill has shown beside the measurement. */
export interface Shown {
  readonly efficiency: Outcome<EfficiencyResult>;
  readonly turns: Outcome<TurnsResult>;
}

/** The settings for the target stress and for the other bands. */
export function worksheetDecision(
  worksheet: Worksheet,
  chain: Chain,
  { measured }: Measurement,
  { efficiency, turns }: Shown,
): Decision {
  const target = knownTarget(worksheet);
  const byReadings = worksheetSetting(target, measured);
  const byScrew = worksheetTheorySetting(chain.theory, target);
  const rails = targetRails(worksheet, { target, input: 'target.stress' }, chain, [
    byReadings,
    byScrew,
  ]);
  const setting = withinRails(byReadings, rails);
  const { section } = chain;
  return {
    setting,
    theorySetting: withinRails(byScrew, rails),
    expectedStretch: worksheetExpectedStretch(worksheet, target),
    turnsSetting: turnsSetting({ setting, turns, measured, own: section, other: section }),
    bands: worksheetBands(worksheet, chain, { measured, efficiency, turns }),
    rails,
  };
}
