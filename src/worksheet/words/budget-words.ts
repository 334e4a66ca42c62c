/** What the lines of the two budgets are called. */
import { wrenchScale } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';

const NAMES: Readonly<Record<string, string>> = {
  stretch: 'Line through the readings',
  dial: 'The dial’s own error',
  youngsModulus: 'Young’s modulus',
  gaugeLength: 'Gauge length',
  misalignment: 'Bar out of line',
  warmthTogether: 'Warmth of band and bar',
  warmthApart: 'Band warmer than bar',
  pressure: 'Pressure gauge',
  sealFriction: 'Friction of the seal',
  pistonDiameter: 'Piston diameter',
  rodDiameter: 'Rod diameter',
  threadFriction: 'Thread friction',
  collarFriction: 'Friction under nut or head',
  collarKind: 'What lies under nut or head',
  collarDiameter: 'Diameter of washer or bearing',
  meanDiameter: 'Thread diameter, 1 %',
  efficiency: 'Efficiency',
  bodyWidth: 'Body width',
  thickness: 'Thickness',
  note: 'The note',
  span: 'The span',
  ends: 'What holds its ends',
  massRatio: 'The mass with the teeth',
  force: 'The pull',
  deflection: 'How far it yields',
  tightening: 'The tightening torque',
  loosening: 'The loosening torque',
  pumping: 'The pressure while pumping',
  lettingDown: 'The pressure while letting down',
  gauge: 'Pressure gauge',
  returnSpring: 'What draws the piston back',
  slide: 'A slide that sticks',
  estimate: 'Friction that is not known',
};

const IS_WRENCH: readonly string[] = ['torque', 'wrench'];
const IS_NO_LOAD: readonly string[] = ['drag', 'dragTorque'];

/** What a line of a budget is called; that of a wrench says how far it may be off, told or assumed. */
export function budgetName(
  name: string,
  { load, number }: Shown,
  wrenchClass: number = wrenchScale,
): string {
  if (IS_WRENCH.includes(name)) return `Torque wrench, ${number(100 * wrenchClass)} %`;
  if (IS_NO_LOAD.includes(name))
    return load.name === 'torque' ? 'No-load torque' : 'No-load pressure';
  return NAMES[name] ?? name;
}
