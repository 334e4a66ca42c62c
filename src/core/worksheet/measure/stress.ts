/**
 * The stress in the band from its stretch: the model, and how well each thing in it is known.
 * Units: SI only (Pa, m, strain).
 * Source: Hooke's law with the corrections of the reading, derived here; a dial is true to one
 * graduation, ASME B89.1.10M, from memory; growth and half-widths, assumptions.ts.
 */
import { bandSteel, thermalExpansion } from '../../assumptions.ts';
import { misalignmentAllowance } from '../../elasticity/dial-reading.ts';
import type { InputByBounds } from '../../statistics/uncertain-input.ts';
import { rectangular } from '../budget.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import { largestUnnoticedTilt, warmthHalfWidths } from '../own-assumptions.ts';

/** What turns a stretch into a stress; each is known to ± a half-width. */
export interface StressScale {
  readonly youngsModulus: InputByBounds; // Pa
  readonly gaugeLength: InputByBounds; // m
  readonly misalignment: InputByBounds; // share of the strain that a bar slightly askew shows
  readonly dial: InputByBounds; // m, the dial's own error
  readonly warmthTogether: InputByBounds; // strain, band and bar warming alike
  readonly warmthApart: InputByBounds; // strain, band warmer or cooler than the bar
}

/** The scale of the worksheet's rig and steel, each part with its half-width. */
export function worksheetStressScale({ band, rig }: Worksheet): Outcome<StressScale> {
  const known = knownInputs({
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
    youngsModulusHalfWidth: [
      'band.youngsModulusHalfWidth',
      band.youngsModulusHalfWidth,
      'notNegative',
    ],
    gaugeLength: ['rig.gaugeLength', rig.gaugeLength],
    gaugeLengthHalfWidth: ['rig.gaugeLengthHalfWidth', rig.gaugeLengthHalfWidth, 'notNegative'],
    graduation: ['rig.graduation', rig.graduation],
  });
  const askew = misalignmentAllowance(largestUnnoticedTilt, bandSteel.poissonsRatio);
  const { steel, [rig.barMaterial]: bar } = thermalExpansion;
  const needs = { known, warmed: warmedTogether(rig) };
  return whenReady(needs, ({ known: input, warmed: { change, halfWidth } }) =>
    ready({
      youngsModulus: rectangular(input.youngsModulus, input.youngsModulusHalfWidth),
      gaugeLength: rectangular(input.gaugeLength, input.gaugeLengthHalfWidth),
      misalignment: rectangular(askew.factor, askew.halfWidth),
      dial: rectangular(0, input.graduation),
      warmthTogether: rectangular((bar - steel) * change, Math.abs(steel - bar) * halfWidth),
      warmthApart: rectangular(0, steel * warmthHalfWidths.apart),
    }),
  );
}

/** By how much band and bar warmed together from zero to the top: as it was read, else nothing, give or take; K. */
function warmedTogether({ warmed }: Worksheet['rig']) {
  if (warmed === undefined) return ready({ change: 0, halfWidth: warmthHalfWidths.together });
  const read = knownInputs({ change: ['rig.warmed', warmed, 'finite'] });
  return whenReady({ read }, ({ read: { change } }) =>
    ready({ change, halfWidth: warmthHalfWidths.read }),
  );
}

/** Stress σ = E·(D/L₀ + warmth)/fₐ in Pa; D is the stretch with the errors of drag and dial beside it, m. */
export function stressOfStretch(
  inputs: Readonly<Record<keyof StressScale | 'stretch' | 'drag', number>>,
): number {
  const elongation = inputs.stretch + inputs.drag + inputs.dial;
  const strain = elongation / inputs.gaugeLength + inputs.warmthTogether + inputs.warmthApart;
  return (inputs.youngsModulus * strain) / inputs.misalignment;
}
