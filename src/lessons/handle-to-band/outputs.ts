/**
 * What the lesson's model `handle-to-band` gives, how each is named to a person.
 * Units: SI in the values.
 * Source: definition.
 */
import type { OutputSpec } from '../../models/define-model.ts';
import { HANDBOOK_OUTPUTS } from '../../models/handbook-friction.ts';

/** The outputs by name: the stages of the chain, the parts of the work, the click of the wrench, what stays fixed, slips. */
export const OUTPUTS = {
  torque: { kind: 'torque', symbol: 'M', label: 'torque on the handle', ink: 'hand' },
  thrust: { kind: 'force', symbol: 'Q', label: 'thrust of the screw', ink: 'plain' },
  wheelForce: { kind: 'force', symbol: 'F_w', label: 'force on the wheel', ink: 'plain' },
  strandForce: { kind: 'force', symbol: 'T', label: 'force in one strand' },
  stress: { kind: 'stress', symbol: '\\sigma', label: 'stress in the steel' },
  stretch: { kind: 'stretch', symbol: '\\Delta L', label: 'stretch over the gauge length' },
  screwTravel: { kind: 'stretch', symbol: 'n\\,l', label: 'travel of the screw', ink: 'plain' },
  wheelTravel: { kind: 'stretch', symbol: 'x_b', label: 'travel of the wheel' },
  frameTravel: { kind: 'stretch', symbol: 'x_f', label: 'give of the frame', ink: 'plain' },
  work: { kind: 'energy', symbol: 'W', label: 'work of the turns', ink: 'hand' },
  bandWork: { kind: 'energy', symbol: 'U_b', label: 'energy in the stretched band' },
  frameWork: { kind: 'energy', symbol: 'U_f', label: 'energy in the frame', ink: 'plain' },
  threadWork: { kind: 'energy', symbol: 'H_t', label: 'heat in the thread', ink: 'plain' },
  collarWork: { kind: 'energy', symbol: 'H_c', label: 'heat in the bearing', ink: 'plain' },
  dragWork: { kind: 'energy', symbol: 'H_d', label: 'heat of the drag', ink: 'plain' },
  bandShare: { kind: 'percent', symbol: '', label: 'share of the work in the band' },
  heatShare: { kind: 'percent', symbol: '', label: 'share that is heat', ink: 'plain' },
  heat: { kind: 'energy', symbol: '', label: 'work turned to heat', ink: 'plain' },
  threadPart: {
    kind: 'percent',
    symbol: '',
    label: 'part of the heat from the thread',
    ink: 'plain',
  },
  dragPart: { kind: 'percent', symbol: '', label: 'part of the heat from the drag', ink: 'plain' },
  clickTorque: {
    kind: 'torque',
    symbol: '',
    label: 'torque at which the wrench clicks',
    ink: 'hand',
  },
  clickStress: { kind: 'stress', symbol: '', label: 'stress when the wrench clicks' },
  dryLoss: { kind: 'percent', symbol: '', label: 'share of the stress lost on a dry thread' },
  ...HANDBOOK_OUTPUTS,
  coilEnergy: { kind: 'energy', symbol: '', label: 'energy of the coiled band' },
  efficiency: { kind: 'percent', symbol: 'e', label: 'efficiency of the screw', ink: 'plain' },
  dragTorque: { kind: 'torque', symbol: 'M_d', label: 'drag of the screw', ink: 'plain' },
  lead: { kind: 'length', symbol: 'l', label: 'lead of the screw', ink: 'plain' },
  area: { kind: 'area', symbol: 'A', label: 'load-bearing section', ink: 'plain' },
  bodyWidth: { kind: 'length', symbol: 'w', label: 'body width', ink: 'plain' },
  thickness: { kind: 'thickness', symbol: 't', label: 'thickness', ink: 'plain' },
  gaugeLength: { kind: 'length', symbol: 'L_0', label: 'gauge length', ink: 'plain' },
  youngsModulus: { kind: 'modulus', symbol: 'E', label: 'Young’s modulus', ink: 'plain' },
  bandStiffness: { kind: 'stiffness', symbol: 'k_b', label: 'stiffness of the band' },
  smoothThrust: { kind: 'force', symbol: '', label: 'thrust without friction' },
  thrustWithDrag: { kind: 'force', symbol: '', label: 'thrust with the drag left in' },
  workAtEndTorque: { kind: 'energy', symbol: '', label: 'work at the last torque' },
} as const satisfies Readonly<Record<string, OutputSpec>>;
