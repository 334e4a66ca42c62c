/**
 * Mass of the band per metre: by its size with the toothed zone partly filled, or by weighing.
 * Units: SI only (m, kg, kg/m, kg/m³).
 * Source: derived here; air carried by a vibrating strip: potential flow past a flat plate, from
 * memory.
 */
import { assertAtMost, assertBetween, assertPositive } from '../assert.ts';

/**
 * The band with its teeth; `toothFill` is the share of the toothed zone that is steel, 0.5 ± 0.1.
 */
export interface ToothedBand {
  readonly density: number; // kg/m³
  readonly widthOverTeeth: number; // m
  readonly bodyWidth: number; // m, below the gullets
  readonly thickness: number; // m
  readonly toothFill?: number; // 0 to 1, 0.5 unless given
}

/**
 * Mass per length m = ρ·t·(w + φ(W − w)) in kg/m.
 * @throws RangeError unless sizes are above 0, bodyWidth ≤ widthOverTeeth, 0 ≤ toothFill ≤ 1
 */
export function massPerLength(band: ToothedBand): number {
  const { density, widthOverTeeth, bodyWidth, thickness, toothFill = 0.5 } = band;
  assertPositive('density', density, 'kg/m³');
  assertPositive('thickness', thickness, 'm');
  assertPositive('widthOverTeeth', widthOverTeeth, 'm');
  assertPositive('bodyWidth', bodyWidth, 'm');
  assertAtMost('bodyWidth', bodyWidth, widthOverTeeth, 'm');
  assertBetween('toothFill', toothFill, 0, 1);
  return density * thickness * (bodyWidth + toothFill * (widthOverTeeth - bodyWidth));
}

/**
 * Mass of air that a plucked strip carries along, ρ_air·π·W²/4 in kg/m: 0.4 to 1 % of the band's
 * own.
 * @throws RangeError unless both are above 0
 */
export function airMassPerLength(width: number, airDensity = 1.2): number {
  assertPositive('width', width, 'm');
  assertPositive('airDensity', airDensity, 'kg/m³');
  return (airDensity * Math.PI * width ** 2) / 4;
}

/**
 * Mass per length of a weighed piece, mass/length in kg/m.
 * @throws RangeError unless both are above 0
 */
export function weighedMassPerLength(mass: number, length: number): number {
  assertPositive('mass', mass, 'kg');
  assertPositive('length', length, 'm');
  return mass / length;
}

/**
 * Mass of the whole band over that of the pulled section, m/(ρ·A); no unit, 1.05 to 1.12 for saw
 * bands: the teeth weigh but carry nothing.
 * @throws RangeError unless all are above 0
 */
export function massRatio(mass: number, density: number, area: number): number {
  assertPositive('massPerLength', mass, 'kg/m');
  assertPositive('density', density, 'kg/m³');
  assertPositive('area', area, 'm²');
  return mass / (density * area);
}
