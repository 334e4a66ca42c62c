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
};

/** What a line of a budget is called. */
export function budgetName(name: string): string {
  return NAMES[name] ?? name;
}
