/** Figures of the published cases that are not compared, each with its reason. */

/** Figures left out: of these cases, those whose path begins so (`''` for all of a case). */
export interface Unused {
  readonly figures: string; // what they are, for a reader
  readonly cases: readonly string[];
  readonly paths: readonly string[];
  readonly reason: string;
}

const ALL: readonly string[] = [''];

/** Everything left out. */
export const unused: readonly Unused[] = [
  {
    figures: 'NIST fits of polynomials, of six variables, and of a line through the origin',
    cases: [
      ...['strd-pontius', 'strd-noint2', 'strd-wampler1', 'strd-wampler3'],
      ...['strd-wampler5', 'strd-longley'],
    ],
    paths: ALL,
    reason: 'The notebook fits straight lines with an intercept, nothing else.',
  },
  {
    figures: 'R squared of the Norris line',
    cases: ['strd-norris'],
    paths: ['published > rSquared'],
    reason: 'The notebook does not use it: it says little of a line that is straight by nature.',
  },
  {
    figures: 'Autocorrelation of readings',
    cases: [
      ...['strd-michelso', 'strd-numacc1', 'strd-numacc3', 'strd-pidigits'],
      ...['strd-mavro', 'strd-lew'],
    ],
    paths: ['published > lag1Autocorrelation'],
    reason: 'The notebook does not use it.',
  },
  {
    figures: 'Terms of second order in the end-gauge example, to all digits',
    cases: ['gum-h1-end-gauge'],
    paths: ['recomputed > ucWithSecondOrderTerms', 'recomputed > secondOrderTerms'],
    reason: 'The budget is of first order; trials give the sum of them, to two digits.',
  },
  {
    figures: 'Analysis of variance: F, its critical values, and what follows from them',
    cases: ['gum-h5-anova'],
    paths: [
      ...['s_a', 'F', 's_B', 'pooled_s_if_none', 'u_if'].map((key) => `published > ${key}`),
      ...['F', 's_B', 'u_if'].map((key) => `recomputed > ${key}`),
    ],
    reason: 'Not part of the notebook.',
  },
  {
    figures: 'Exact half-width of the sum with one dominant rectangle',
    cases: ['s1-9-2-4-dominant-rectangular'],
    paths: ['recomputed > half_exact'],
    reason: 'Trials give it to three digits, which the printed figure checks.',
  },
  {
    figures: 'Second-order budget and shortest intervals of the mass and the comparison loss',
    cases: ['s1-9-3-mass-calibration', 's1-9-4-comparison-loss'],
    paths: [
      ...['published > secondOrder', 'published > monteCarlo > shortest95'],
      ...['recomputed > u_exact', 'recomputed > monteCarlo24e6_shortest95'],
      ...['0', '0.010', '0.050'].map((x1) => `published > x1=${x1} > shortest95`),
      ...['0', '0.01', '0.05'].map((x1) => `recomputed > x1=${x1}`),
    ],
    reason:
      'Ours leaves as much out on either side, the source gives the shortest; trials do not reach the digits of the exact figures.',
  },
  {
    figures: 'First-order figures and shortest interval of the gauge block',
    cases: ['s1-9-5-gauge-block'],
    paths: [
      ...['published > firstOrder', 'published > monteCarlo > interval99'],
      'recomputed > monteCarlo12e6 > shortest99',
    ],
    reason:
      'To first order it is the end gauge of the GUM, which is checked; ours is not the shortest.',
  },
  {
    figures: 'Stresses in the body of the screw',
    cases: ['shigley-8-1-power-screw'],
    paths: ['tau_body', 'sigma', 'vonMises'].flatMap((key) => [
      `published > ${key}`,
      `recomputed > ${key}`,
    ]),
    reason: 'The notebook asks what the screw does to the band, not whether the screw holds.',
  },
  {
    figures: 'Tangent of the lead angle, 0.0592',
    cases: ['mott-17-1-acme'],
    paths: ['published > tanLambda'],
    reason: 'The book cuts 0.05926 off after four places; its torque is 0.3 % low for that.',
  },
  {
    figures: 'Endurance of the thin steel belt, and its bending to all digits',
    cases: ['shigley-17-3-metal-belt'],
    paths: [
      ...['published > Sf_psi', 'recomputed > Sf_psi', 'recomputed > bendingStress_psi'],
      ...['recomputed > F1a_per_inch_lbf', 'recomputed > b_min_in'],
    ],
    reason:
      'The endurance is a law of that steel; the book bends the belt to the wheel itself, we bend its middle, half a thickness further out.',
  },
  {
    figures: 'Stress areas of Unified threads from the exact height of the thread',
    cases: ['asme-b1-1-unc'],
    paths: ['recomputed'],
    reason: 'The standard’s own rounded factor is used; it is 5 to 8 millionths off.',
  },
  {
    figures: 'Largest minor diameters of Acme 2G, minor and major diameters of trapezoidal nuts',
    cases: ['asme-b1-5-acme-2g-max', 'iso2904-trapezoidal-a'],
    paths: ['published'],
    reason: 'Nothing in the notebook depends on them.',
  },
  {
    figures: '68 °F in °C',
    cases: ['temperature-difference'],
    paths: ['published > 68F_in_C'],
    reason: 'The notebook knows differences of temperature only.',
  },
  {
    figures: 'Poisson’s ratio and shear modulus of steels',
    cases: ['en1993-steel', 'spring-wire-moduli', 'shigley-a5'],
    paths: [
      ...['published > nu', 'published > G_', 'recomputed > G_MPa'],
      ...['published > carbonSteel > G_', 'published > carbonSteel > nu'],
    ],
    reason:
      'Poisson’s ratio is the same 0.3 and enters small corrections only; the shear modulus is given from outside and enters twist alone.',
  },
  {
    figures: 'Thermal growth of steel and aluminum, 12 and 25 millionths per °C',
    cases: ['en1993-steel', 'openstax-moduli'],
    paths: [
      'published > alpha_per_K',
      'published > universityPhysics > alpha_per_K > ironOrSteel',
      'published > universityPhysics > alpha_per_K > aluminum',
    ],
    reason:
      'Two-digit figures for a whole family of metals. The notebook takes 11.5 for band steel and 23 for an aluminum bar, from memory: 4 and 8 % less.',
  },
  {
    figures:
      'Figures of other materials: hard-drawn and stainless wire, cast iron, aluminum, invar, granite, hardwood; weights',
    cases: ['openstax-moduli', 'spring-wire-moduli', 'shigley-a5'],
    paths: [
      ...['aluminum', 'hardwood', 'granite'].map(
        (name) => `published > universityPhysics > E_GPa > ${name}`,
      ),
      'published > universityPhysics > alpha_per_K > invar',
      ...['aluminum', 'hardwood', 'ironCast'].map(
        (name) => `published > collegePhysics > E_GPa > ${name}`,
      ),
      ...['published > E_Mpsi > hardDrawnSteel', 'published > E_Mpsi > stainless302'],
      ...['published > aluminumAll', 'published > stainless18_8', 'published > castIronGray'],
      'published > carbonSteel > w_',
    ],
    reason: 'No band is made of them and no constant of the notebook stands for them.',
  },
  {
    figures: 'Growth of fir, pine and wood in other tables',
    cases: ['wood-along-grain-expansion'],
    paths: ['seenElsewhere'],
    reason: 'Seen without a source; the range of the handbook is checked.',
  },
  {
    figures: 'Fletcher’s B',
    cases: ['fletcher-stiff-string-a'],
    paths: ['recomputed > 0 > B', 'recomputed > 1 > B'],
    reason: 'A step on the way; the notes that follow from it are checked.',
  },
  {
    figures: 'Sag of a beam without tension',
    cases: ['tensioned-beam-central-load-a'],
    paths: ['recomputed > 0 > beamOnly', 'recomputed > 1 > beamOnly'],
    reason: 'Nothing here has no tension: such a span is refused.',
  },
  {
    figures: 'Permitted errors of dial gauges',
    cases: ['jis-b7503-0.01mm', 'jis-b7503-0.01mm-small-bezel'],
    paths: ALL,
    reason:
      'A table of limits, with nothing to compute. The notebook allows one graduation either way: as much as the table permits within one turn of a 10 mm dial, two thirds of what it permits over the whole range.',
  },
];
