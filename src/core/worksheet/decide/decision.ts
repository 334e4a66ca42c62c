/**
 * The deciding side of the worksheet, composed: the settings, and the rails that may stop them.
 * Units: SI only (N·m, Pa, m).
 * Source: definition.
 */

import type { Worksheet } from '../inputs.ts';
import type { Measurement } from '../measure/measurement.ts';
import type { Outcome } from '../outcome.ts';
import { whenReady } from '../outcome.ts';
import type { Chain } from '../predict/chain.ts';
import type { EfficiencyResult } from './efficiency.ts';
import type { OtherBandResult } from './other-band.ts';
import { worksheetOtherBand, worksheetOtherSection } from './other-band.ts';
import type { RailContext, RailsResult } from './rails.ts';
import { withinRails, worksheetRails } from './rails.ts';
import type { SettingResult } from './setting.ts';
import { knownTarget, worksheetSetting } from './setting.ts';
import type { TheorySettingResult } from './theory-setting.ts';
import { worksheetTheorySetting } from './theory-setting.ts';

/** The settings, each refused where a rail stops it, and the rails of the two bands. */
export interface Decision {
  readonly setting: Outcome<SettingResult>;
  readonly theorySetting: Outcome<TheorySettingResult>;
  readonly otherBand: Outcome<OtherBandResult>;
  readonly rails: Outcome<RailsResult>;
  readonly otherRails: Outcome<RailsResult>;
}

/** The settings for the target stress and for the other band. */
export function worksheetDecision(
  worksheet: Worksheet,
  chain: Chain,
  { measured }: Measurement,
  efficiency: Outcome<EfficiencyResult>,
): Decision {
  const setting = worksheetSetting(worksheet, measured);
  const theorySetting = worksheetTheorySetting(worksheet, chain.theory, chain.screw);
  const rails = targetRails(worksheet, chain, [setting, theorySetting]);
  const own = { section: chain.section, measured, efficiency };
  const otherBand = worksheetOtherBand(worksheet, own);
  const otherContext = { ...chain, section: worksheetOtherSection(worksheet) };
  const otherRails = whenReady({ otherBand }, ({ otherBand: { stress, expandedUncertainty } }) =>
    worksheetRails(
      worksheet,
      { stress, expandedUncertainty, input: 'otherBand.targetStress' },
      otherContext,
    ),
  );
  return {
    setting: withinRails(setting, rails),
    theorySetting: withinRails(theorySetting, rails),
    otherBand: withinRails(otherBand, otherRails),
    rails,
    otherRails,
  };
}

/** The rails of the target, with the uncertainty of the best setting there is. */
function targetRails(
  worksheet: Worksheet,
  context: RailContext,
  settings: readonly Outcome<{ readonly expandedUncertainty: number }>[],
): Outcome<RailsResult> {
  const best = settings.find((setting) => setting.ready);
  return whenReady({ target: knownTarget(worksheet) }, ({ target: { stress } }) => {
    const expandedUncertainty = best?.ready ? best.expandedUncertainty : 0;
    return worksheetRails(
      worksheet,
      { stress, expandedUncertainty, input: 'target.stress' },
      context,
    );
  });
}
