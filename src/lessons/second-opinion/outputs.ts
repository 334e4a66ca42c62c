/**
 * What the model `second-opinion` gives, each output with its kind.
 * Units: SI.
 * Source: definition.
 */
import type { QuantityKind } from '../../units/kinds.ts';

/** Every output of the model. */
export const OUTPUTS = {
  pitch: 'frequency',
  secondTone: 'frequency',
  thirdTone: 'frequency',
  otherPitch: 'frequency',
  stringPitch: 'frequency',
  doublePitch: 'frequency',
  strandPitch: 'frequency',
  strandPull: 'force',
  area: 'area',
  bodyWidth: 'length',
  thickness: 'thickness',
  density: 'density',
  teeth: 'ratio',
  poundGravity: 'ratio',
  stringStress: 'stress',
  noteStress: 'stress',
  noteExpanded: 'stress',
  noteLow: 'stress',
  noteHigh: 'stress',
  noteString: 'percent',
  ifSecond: 'stress',
  lowestNote: 'frequency',
  isTooLow: 'count',
  pressForce: 'force',
  pressString: 'force',
  pressPull: 'force',
  pressStress: 'stress',
  pressStringStress: 'stress',
  pressExpanded: 'stress',
  pressCorrection: 'percent',
  strandSpan: 'length',
  mostDeflection: 'length',
  dialStress: 'stress',
  dialExpanded: 'stress',
  pluckStress: 'stress',
  pluckExpanded: 'stress',
  weightStress: 'stress',
  weightExpanded: 'stress',
  dialPluck: 'ratio',
  dialPress: 'ratio',
  pluckPress: 'ratio',
  sectionTimes: 'percent',
  zeroError: 'stretch',
  spanError: 'length',
} as const satisfies Readonly<Record<string, QuantityKind>>;
