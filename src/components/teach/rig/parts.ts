/** The rig's parts in the order of their numbers on the drawing; sizes are names of its model's values, where the torque is its limit. */
import { BUILD, RIG } from '../../../models/mills/classroom-rig.ts';

/** One part: what it is, its sizes joined by × right behind, and what else to know. */
export interface RigPart {
  readonly name: string;
  readonly sizes: readonly string[];
  readonly says?: string;
}

/** All parts. */
export const RIG_PARTS: readonly RigPart[] = [
  { name: 'Strip of band steel,', sizes: ['width', 'thickness', 'stripLength'], says: 'no teeth' },
  {
    name: 'Two grips, each of two steel plates,',
    sizes: ['gripWidth', 'gripLength', 'gripThickness'],
    says: `with ${BUILD.gripBolts} ${BUILD.gripBolt} bolts of class 8.8; one welded to its end plate, one to the rod`,
  },
  {
    name: 'Two square steel tubes,',
    sizes: ['tube', 'tubeWall', 'tubeLength'],
    says: 'beside each other',
  },
  { name: 'Two steel end plates,', sizes: ['plateWidth', 'plateHeight', 'plateThickness'] },
  { name: `Threaded rod ${RIG.thread}`, sizes: [], says: 'through the hole in its end plate' },
  { name: 'Nut and washer', sizes: [], says: 'oiled; the nut is what the wrench turns' },
  {
    name: 'Dial indicator on a bar with two clamps, gauge length',
    sizes: ['gaugeLength'],
    says: 'the bar in one clamp, the plunger on the other',
  },
  {
    name: 'Torque wrench with a deep socket, up to',
    sizes: ['torque'],
    says: 'never more',
  },
  {
    name: 'Clear plastic',
    sizes: [],
    says: 'over the strip and in front of it, fixed to the frame',
  },
];
