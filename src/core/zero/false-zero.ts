/**
 * Why the first reading is not zero: the bar sits at a height off the band's mid-plane, so whatever
 * bends the band moves the dial.
 * Units: SI only (m, N).
 * Source: derived here (plane sections of a bent strip; a strip under tension with two clamp
 * loads).
 */
import {
  assertAtLeast,
  assertAtMost,
  assertBetween,
  assertFinite,
  assertPositive,
} from '../assert.ts';

/** A band that keeps the curve of its coil while slack. */
export interface CoilSet {
  readonly gaugeLength: number; // m
  readonly coilRadius: number; // m, of the curve left in the slack band
}

function assertCoil({ gaugeLength, coilRadius }: CoilSet): void {
  assertPositive('gaugeLength', gaugeLength, 'm');
  assertPositive('coilRadius', coilRadius, 'm');
}

/**
 * Shift h·L₀/R of the reading in m as the curve straightens out; `height` is from mid-plane to the
 * dial's line and may be negative.
 * @throws RangeError unless gaugeLength and coilRadius are above 0 m
 */
export function coilShift(coil: CoilSet, height: number): number {
  assertCoil(coil);
  assertFinite('height', height, 'm');
  return (height * coil.gaugeLength) / coil.coilRadius;
}

/**
 * Arc less chord of the gauge length, L₀ − 2R·sin(L₀/2R) in m, about L₀³/(24R²); at least 0.
 * @throws RangeError unless gaugeLength and coilRadius are above 0 m and the arc under half a
 * circle
 */
export function chordShift(coil: CoilSet): number {
  assertCoil(coil);
  const { gaugeLength, coilRadius } = coil;
  assertAtMost('gaugeLength', gaugeLength, Math.PI * coilRadius, 'm');
  return gaugeLength - 2 * coilRadius * Math.sin(gaugeLength / (2 * coilRadius));
}

/** A stretch of the strand, as distances from its middle. */
export interface StrandPart {
  readonly endLength: number; // m, √(EI/T)
  readonly strand: number; // m, between the wheels
  readonly from: number; // m, −strand/2 to strand/2
  readonly to: number; // m, above `from`
}

/** sinh x/cosh(peak) for |x| ≤ peak, without overflow on a long strand. */
function fadedSinh(x: number, peak: number): number {
  return (Math.exp(x - peak) - Math.exp(-x - peak)) / (1 + Math.exp(-2 * peak));
}

/**
 * Share of the coil's curve left in a part of the strand, mean of cosh(κx)/cosh(κs/2) over it; no
 * unit, 1 at the wheel, fading as exp(−κ·distance).
 * @throws RangeError unless lengths are above 0 m and −strand/2 ≤ from < to ≤ strand/2
 */
export function coilSetLeft({ endLength, strand, from, to }: StrandPart): number {
  assertPositive('endLength', endLength, 'm');
  assertPositive('strand', strand, 'm');
  assertBetween('from', from, -strand / 2, strand / 2, 'm');
  assertBetween('to', to, from, strand / 2, 'm');
  assertPositive('to − from', to - from, 'm');
  const peak = strand / (2 * endLength);
  const rise = fadedSinh(to / endLength, peak) - fadedSinh(from / endLength, peak);
  return (rise * endLength) / (to - from);
}

/**
 * What the bar's weight hides of the reading on a level strand, h·W/(2T) in m: add it. Positive for
 * a bar on top, negative for one underneath (height negative); it dies only as 1/T.
 * @throws RangeError unless weight ≥ 0 N and tension > 0 N
 */
export function gaugeWeightShift({
  height,
  weight,
  tension,
}: {
  readonly height: number; // m
  readonly weight: number; // N
  readonly tension: number; // N
}): number {
  assertFinite('height', height, 'm');
  assertAtLeast('weight', weight, 0, 'N');
  assertPositive('tension', tension, 'N');
  return (height * weight) / (2 * tension);
}
