/**
 * What the model `handle-to-band` gives, each output with its kind.
 * Units: SI.
 * Source: definition.
 */
import { HANDBOOK_KINDS } from '../../models/handbook-friction.ts';
import type { QuantityKind } from '../../units/kinds.ts';

/** Every output of the model. */
export const OUTPUTS = {
  torque: 'torque',
  thrust: 'force',
  wheelForce: 'force',
  strandForce: 'force',
  stress: 'stress',
  stretch: 'stretch',
  screwTravel: 'stretch',
  wheelTravel: 'stretch',
  frameTravel: 'stretch',
  work: 'energy',
  bandWork: 'energy',
  frameWork: 'energy',
  threadWork: 'energy',
  collarWork: 'energy',
  dragWork: 'energy',
  bandShare: 'percent',
  heatShare: 'percent',
  heat: 'energy',
  threadPart: 'percent',
  dragPart: 'percent',
  clickTorque: 'torque',
  clickStress: 'stress',
  dryLoss: 'percent',
  ...HANDBOOK_KINDS,
  coilEnergy: 'energy',
  efficiency: 'percent',
  dragTorque: 'torque',
  lead: 'length',
  area: 'area',
  bodyWidth: 'length',
  thickness: 'thickness',
  gaugeLength: 'length',
  youngsModulus: 'modulus',
  bandStiffness: 'stiffness',
  smoothThrust: 'force',
  thrustWithDrag: 'force',
  workAtEndTorque: 'energy',
} as const satisfies Readonly<Record<string, QuantityKind>>;
