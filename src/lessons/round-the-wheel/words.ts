/**
 * How the quantities of the model `round-the-wheel` are named.
 * Units: none.
 * Source: definition.
 */
import { hand, type ModelWords, plain, steel } from '../../models/words.ts';
import type { roundTheWheel } from './model.ts';

/** The words of every input and output. */
export const words: ModelWords<typeof roundTheWheel> = {
  inputs: {
    over: { label: 'the band runs over', options: { wheel: 'a wheel', endless: 'an endless one' } },
    wheelDiameter: hand('diameter of the wheels', 'D'),
    thickness: hand('thickness of the band', 't'),
    tension: hand('tension at rest', '\\sigma'),
    speed: hand('speed of the band', 'v'),
    power: hand('power into the cut', 'P'),
    place: hand('place on the lap'),
    change: hand('change of one thing'),
    exponent: hand('exponent of the steel', 'm'),
  },
  outputs: {
    bending: steel('bending stress on the wheel', '\\sigma_b'),
    shownBending: steel('bending stress as drawn'),
    bendTimes: steel('bend over tension'),
    outerStress: steel('stress on the outer face', '\\sigma_\\text{out}'),
    innerStress: steel('stress on the inner face'),
    edgeBend: steel('bending stress at the gullets'),
    centrifugal: steel('centrifugal stress', '\\sigma_c'),
    share: plain('share of the centrifugal stress in the strands', '\\eta'),
    runAdds: steel('what the speed adds to the strands'),
    tightStress: steel('stress in the tight strand', '\\sigma_1'),
    slackStress: steel('stress in the slack strand'),
    cutAdds: steel('what the cut adds to one strand'),
    peak: steel('highest stress of a lap', '\\sigma_{\\max}'),
    range: steel('swing of the stress', '\\Delta\\sigma'),
    shareOfYield: steel('share of the yield strength'),
    bends: steel('bends an hour', 'z'),
    loopLength: plain('length of the band, once round', 'L'),
    strandShare: plain('share of a lap that one strand is'),
    stressHere: steel('stress at this place'),
    isSlipping: plain('whether the driving wheel would slip'),
    perThickness: plain('wheel over thickness'),
    thicknessLife: steel('life with another thickness'),
    tensionLife: steel('life with another tension'),
    wheelLife: steel('life with another wheel'),
    youngsModulus: plain('Young’s modulus', 'E'),
    density: plain('density of steel', '\\rho'),
    yieldStrength: plain('least yield strength of band steel'),
    edgeFactor: plain('factor of the gullets'),
    edgeSpread: plain('half-width of that factor'),
    leastTimes: steel('bend over tension at Yarrock'),
    mostTimes: steel('bend over tension at Hobsend'),
    largeWheel: plain('the larger of two wheels'),
    smallWheel: plain('the smaller of two wheels'),
    largeBend: steel('bending stress on the larger wheel'),
    smallBend: steel('bending stress on the smaller wheel'),
    smallShareLow: plain('least share of the smaller wheel in the wear'),
    smallShareHigh: plain('most share of the smaller wheel in the wear'),
    meanFactor: plain('factor of the width, mean'),
    looseEdgeFactor: plain('factor of a loose edge'),
    wideFactor: plain('factor of a very wide strip'),
  },
};
