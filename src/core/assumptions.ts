/**
 * Every number that is assumed and not given: written once, read everywhere.
 * Units: SI only, said beside each.
 * Source: said beside each.
 */

/** Steel of bands: modulus 205 ± 5 GPa, shear modulus, Poisson's ratio, kg/m³, least yield strength in Pa, strain that none springs back from: from memory. */
export const bandSteel = {
  youngsModulus: 205e9,
  youngsModulusHalfWidth: 5e9,
  shearModulus: 79e9,
  poissonsRatio: 0.3,
  density: 7850,
  yieldStrength: 1100e6,
  mostStrain: 0.004,
} as const;

/** Growth with warmth, 1/K: from memory. */
export const thermalExpansion = { steel: 11.5e-6, aluminium: 23e-6, wood: 4e-6 } as const;

/** Hydraulic oil: bulk modulus in Pa, the middle of 1.4 to 1.8 GPa; growth of its volume with warmth, 1/K: from memory. */
export const hydraulicOil = { bulkModulus: 1.6e9, expansion: 7e-4 } as const;

/** Standard deviation of a dial at one setting where it was not measured, m: common practice, no source. */
export const dialRepeatability = 5e-6;

/** Half-widths of a body width by calipers and of a thickness by micrometer, m: common practice, no source. */
export const sectionHalfWidths = { bodyWidth: 0.5e-3, thickness: 0.01e-3 } as const;

/** Half-widths of a second opinion: a span and a sideways movement by ruler, m; a scale's weight, as a share; a toothed zone's share of steel: common practice, no source. */
export const checkHalfWidths = {
  span: 3e-3,
  deflection: 1e-4,
  weight: 0.01,
  toothFill: 0.1,
} as const;

/** Half-width of a thread friction that is a guess: common practice, no source. */
export const threadFrictionHalfWidth = 0.04;

/** Half-widths of a collar's friction and of a pitch diameter, as shares of them: common practice, no source. */
export const screwSpreads = { collarFriction: 0.3, pitchDiameter: 0.01 } as const;

/** Friction of a band on its rims, steel or tyre: common practice, no source. */
export const rimFriction = { low: 0.2, high: 0.3 } as const;

/** Bending at the gullets over that of a narrow strip: derived here (wheel/wide-strip, 1.05 ± 0.05). */
export const edgeFactor = 1.05;

/** Tension in use on small mills, Pa: common practice, no source. */
export const workingStress = { low: 60e6, high: 170e6 } as const;

/** Shares of the yield strength above which a band does not live long, and no setting is given: common practice, no source. */
export const yieldShares = { shortLife: 0.6, stop: 0.8 } as const;

/** Margins under which slip and backing off are near: common practice, no source. */
export const leastMargins = { slip: 1.2, selfLocking: 1.2 } as const;

/** Exponent by which life falls with stress, no unit: Dowling 9.7, from memory. */
export const lifeExponent = { low: 6, usual: 9, high: 12 } as const;

/**
 * What a window of tension is drawn for unless the reader says otherwise: a push at the teeth of the standing band, N,
 * the most it may move them, m, and the part of today's life that is to be kept: our choice, common practice, no source.
 */
export const windowWishes = { push: 30, movement: 4e-3, lifeKept: 0.8 } as const;

/** How much warmer than frame and wheels a band runs after the first cuts, K: common practice, no source. */
export const bandWarming = 15;

/** Share of its cone height that a disc spring should not be pressed beyond: common practice, no source. */
export const discWorkingShare = 0.75;

/** What an interval holds, and its reach in standard uncertainties where nothing limits them: by definition. */
export const coverage = { probability: 0.95, factor: 2 } as const;
