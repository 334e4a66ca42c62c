/** What the lines of the two budgets are called. */

const NAMES: Readonly<Record<string, string>> = {
  stretch: 'Line through the readings',
  drag: 'No-load torque',
  dial: 'The dial’s own error',
  youngsModulus: 'Young’s modulus',
  gaugeLength: 'Gauge length',
  misalignment: 'Bar out of line',
  warmthTogether: 'Warmth of band and bar',
  warmthApart: 'Band warmer than bar',
  torque: 'Torque wrench, 4 %',
  threadFriction: 'Thread friction',
  collarFriction: 'Friction under nut or head',
  collarKind: 'What lies under nut or head',
  collarDiameter: 'Diameter of washer or bearing',
  meanDiameter: 'Thread diameter, 1 %',
  efficiency: 'Efficiency',
  bodyWidth: 'Body width',
  thickness: 'Thickness',
  dragTorque: 'No-load torque',
  note: 'The note',
  span: 'The span',
  massRatio: 'The mass with the teeth',
  force: 'The pull',
  deflection: 'How far it yields',
  tightening: 'The tightening torque',
  loosening: 'The loosening torque',
  wrench: 'Torque wrench, 4 %',
  slide: 'A slide that sticks',
  estimate: 'Friction that is not known',
};

/** What a line of a budget is called. */
export function budgetName(name: string): string {
  return NAMES[name] ?? name;
}
