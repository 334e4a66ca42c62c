/**
 * What the folds tell of other bands and mills, as plain data: the bend and its share of the wear on two unequal wheels,
 * how many times the tension the bend is on the smallest and the largest mill, how far the strip's width matters.
 * Units: SI; ratios have none.
 * Source: core/wheel; the mills are invented.
 */
import { bandSteel, edgeFactor, lifeExponent } from '../../core/assumptions.ts';
import {
  bendingStress,
  edgeBendingFactor,
  meanBendingFactor,
  peakStress,
  stressRange,
  swtLifeRatio,
  widthParameter,
} from '../../core/wheel.ts';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';

const { youngsModulus, poissonsRatio } = bandSteel;
const bend = (wheelDiameter: number, thickness: number) =>
  bendingStress({ youngsModulus, wheelDiameter, thickness });

/** Two wheels of different size under one band. */
const UNEQUAL = { large: 0.6, small: 0.45, thickness: 0.0011, tension: 115e6 };
const [atLarge, atSmall] = [UNEQUAL.large, UNEQUAL.small].map((wheel) =>
  bend(wheel, UNEQUAL.thickness),
) as [number, number];

/** One bend over a wheel with nothing cut: peak, and half of the swing. */
function cycle(bendingStress: number) {
  const load = { tight: UNEQUAL.tension, area: 1, bendingStress, edgeFactor };
  return { peak: peakStress(load), amplitude: stressRange(load, load.tight) / 2 };
}

/** What a bend over the large wheel wears, for each bend over the small one. */
const wear = (exponent: number) => 1 / swtLifeRatio(cycle(atLarge), cycle(atSmall), exponent);
const smallShare = (exponent: number) => 1 / (1 + wear(exponent));

/** The wheels of two sizes. */
export const unequal = {
  largeWheel: UNEQUAL.large,
  smallWheel: UNEQUAL.small,
  largeBend: atLarge,
  smallBend: atSmall,
  smallShareLow: smallShare(lifeExponent.low),
  smallShareHigh: smallShare(lifeExponent.high),
};

/** Bend over tension on the largest of the invented mills, Yarrock, and on the smallest, Hobsend. */
export const extremes = {
  leastTimes: bend(1.07, 0.00125) / 95e6,
  mostTimes: bend(0.3556, 0.000889) / 84_805_514.706,
};

const strip = widthParameter({
  width: OTTERSLEIGH.widthOverTeeth,
  bendRadius: (OTTERSLEIGH.wheelDiameter + OTTERSLEIGH.thickness) / 2,
  thickness: OTTERSLEIGH.thickness,
  poissonsRatio,
});

/** Bending of Ottersleigh's band over that of a narrow strip; the last is that of a very wide one. */
export const widths = {
  meanFactor: meanBendingFactor(strip, poissonsRatio),
  looseEdgeFactor: edgeBendingFactor(strip, poissonsRatio),
  wideFactor: meanBendingFactor(1e6, poissonsRatio),
};
