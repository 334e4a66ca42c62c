/**
 * What spoils a reading on the rig: the gauge at an angle to the band, warmth on the bar alone or on bar and band alike,
 * a clamp that slips. One at a time; the band's own tension stays as it is.
 * Units: SI (m, Pa, rad, K).
 * Source: core/elasticity and core/drift; the mill is invented.
 */
import { bandSteel, thermalExpansion } from '../../../core/assumptions.ts';
import { apparentStressThermal } from '../../../core/drift.ts';
import { elongation, misalignmentFactor, stress } from '../../../core/elasticity.ts';
import { OTTERSLEIGH } from '../../../models/mills/ottersleigh.ts';

/** What can go wrong, in the order in which it is offered. */
export const FAULTS = ['angle', 'hand', 'sun', 'slip'] as const;

/** What a bar may be made of. */
export const BARS = ['wood', 'steel', 'aluminium'] as const;

/** How the rig stands. */
export interface Rig {
  readonly fault: (typeof FAULTS)[number];
  readonly bar: (typeof BARS)[number];
  readonly angle: number; // rad
  readonly warming: number; // K
  readonly slip: number; // m
}

/** The kinds of what `shownOnRig` and its constants give. */
export const RIG_KINDS = {
  rigLength: 'length',
  rigStress: 'stress',
  rigStretch: 'stretch',
  rigShown: 'stretch',
  feignedStretch: 'stretch',
  feignedStress: 'stress',
  feignedSize: 'stress',
  ofSteelBar: 'stress',
  bandGrowth: 'stretch',
  barGrowth: 'stretch',
  lostShare: 'percent',
  saidStress: 'stress',
} as const;

const { youngsModulus, poissonsRatio } = bandSteel;
const { gaugeLength, targetStress } = OTTERSLEIGH;
const rigStretch = elongation({ stress: targetStress, youngsModulus, gaugeLength });

/** The rig at its setting: what the band really carries and how far it is stretched. */
export const RIG = { rigLength: gaugeLength, rigStress: targetStress, rigStretch } as const;

/** How far band and bar grow over the gauge length with warmth, m: as the stretch that the dial would take it for. */
function growths({ fault, bar, warming }: Rig) {
  const alone = (expansion: number, temperatureChange: number) => {
    const [part, still] = [
      { expansion, temperatureChange },
      { expansion, temperatureChange: 0 },
    ];
    const feigned = apparentStressThermal({ youngsModulus, band: part, bar: still });
    return elongation({ stress: feigned, youngsModulus, gaugeLength });
  };
  return {
    bandGrowth: alone(thermalExpansion.steel, fault === 'sun' ? warming : 0),
    barGrowth: alone(thermalExpansion[bar], fault === 'sun' || fault === 'hand' ? warming : 0),
    steelGrowth: alone(thermalExpansion.steel, warming),
  };
}

/** What the dial shows, and the stress that one would take it for. */
export function shownOnRig(rig: Rig) {
  const { fault, angle, slip } = rig;
  const { bandGrowth, barGrowth, steelGrowth } = growths(rig);
  const lost = fault === 'angle' ? 1 - misalignmentFactor(angle, poissonsRatio) : 0;
  const slipped = fault === 'slip' ? slip : 0;
  const feignedStretch = bandGrowth - barGrowth + slipped - lost * rigStretch;
  const inStress = (moved: number) => stress({ elongation: moved, gaugeLength }, youngsModulus);
  const feignedStress = inStress(feignedStretch);
  return {
    bandGrowth,
    barGrowth,
    lostShare: lost,
    feignedStretch,
    rigShown: rigStretch + feignedStretch,
    feignedStress,
    feignedSize: Math.abs(feignedStress),
    ofSteelBar: inStress(steelGrowth),
    saidStress: inStress(rigStretch + feignedStretch),
  };
}
