/**
 * What the model `round-the-wheel` gives, each output with its kind.
 * Units: SI.
 * Source: definition.
 */

/** Every output of the model. */
export const OUTPUTS = {
  bending: 'stress',
  shownBending: 'stress',
  bendTimes: 'ratio',
  outerStress: 'stress',
  innerStress: 'stress',
  edgeBend: 'stress',
  centrifugal: 'stress',
  share: 'percent',
  runAdds: 'stress',
  tightStress: 'stress',
  slackStress: 'stress',
  cutAdds: 'stress',
  peak: 'stress',
  range: 'stress',
  shareOfYield: 'percent',
  bends: 'ratio',
  loopLength: 'longLength',
  strandShare: 'percent',
  stressHere: 'stress',
  isSlipping: 'count',
  perThickness: 'ratio',
  thicknessLife: 'percent',
  tensionLife: 'percent',
  wheelLife: 'percent',
  youngsModulus: 'modulus',
  density: 'density',
  yieldStrength: 'stress',
  edgeFactor: 'ratio',
  edgeSpread: 'ratio',
  leastTimes: 'ratio',
  mostTimes: 'ratio',
  largeWheel: 'length',
  smallWheel: 'length',
  largeBend: 'stress',
  smallBend: 'stress',
  smallShareLow: 'percent',
  smallShareHigh: 'percent',
  meanFactor: 'ratio',
  looseEdgeFactor: 'ratio',
  wideFactor: 'ratio',
} as const;
