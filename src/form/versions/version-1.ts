/**
 * Version 1 of the file, as the site wrote it first, and the form of that time. Everything here is frozen: no name and
 * no order is taken from the form of today, so that a file of yesterday opens whatever becomes of it. What is none of
 * its names keeps its place, where no box is, and so is set aside.
 * Units: as typed.
 * Source: definition.
 */
import { isParts, type Parts } from '../box-by-box.ts';

const BOXES: readonly string[] = [
  'mill.wheelDiameter1',
  'mill.wheelDiameter2',
  'mill.centreDistance',
  'band.bodyWidth',
  'band.widthOverTeeth',
  'band.thickness',
  'band.youngsModulus',
  'band.youngsModulusHalfWidth',
  'tensioner.thread.outsideDiameter',
  'tensioner.thread.pitch',
  'tensioner.starts',
  'tensioner.advantage',
  'tensioner.friction.low',
  'tensioner.friction.high',
  'tensioner.collar.friction',
  'tensioner.collar.outerDiameter',
  'tensioner.collar.innerDiameter',
  'tensioner.dragTorque',
  'tensioner.dragTorqueUncertainty',
  'rig.gaugeLength',
  'rig.gaugeLengthHalfWidth',
  'rig.graduation',
  'rig.readTo',
  'rig.travelPerTurn',
  'rig.repeatability',
  'rig.barWeight',
  'rig.barHeight',
  'target.stress',
  'target.makerLimitStress',
  'target.makerLimitWheelForce',
  'target.yieldStrength',
  'otherBand.bodyWidth',
  'otherBand.thickness',
  'otherBand.targetStress',
];

/** The paths that version 2 has for what version 1 kept apart. */
const CHOICES: Parts = {
  thread: 'tensioner.thread.kind',
  form: 'tensioner.thread.form',
  losses: 'tensioner.friction.kind',
  collar: 'tensioner.collar.kind',
  dial: 'rig.dialRuns',
  bar: 'rig.barMaterial',
  otherBand: 'otherBand.kind',
};
const LABEL = 'label';
const THREAD = 'tensioner.thread.designation';
const READING_COLUMNS = ['torque', 'dial', 'wholeTurns', 'turns'];
const WAY_COLUMNS = ['name', 'torque'];
const DIAL_COLUMNS = ['dial', 'wholeTurns'];

type Entries = readonly (readonly [place: string, value: unknown])[];

/** Named parts by the places that they have today; anything else in their stead keeps its own. */
function placed(part: string, value: unknown, placeOf: (name: string) => unknown): Entries {
  if (!isParts(value)) return [[part, value]];
  return Object.entries(value).map(([name, each]) => [
    String(placeOf(name) ?? `${part}.${name}`),
    each,
  ]);
}

const withColumns = (columns: readonly string[], rows: unknown): unknown =>
  Array.isArray(rows) ? [columns, ...rows] : rows;

/** One way of setting: its row, its own readings, and what else it brought. */
function fromWay(way: unknown, place: number) {
  if (!isParts(way)) return { row: way, tables: [], others: [] };
  const { name, torque, readings, ...others } = way;
  return {
    row: [name, torque],
    tables: [[`ways.${place}.readings`, withColumns(DIAL_COLUMNS, readings)]] as Entries,
    others: Object.entries(others).map(([key, each]) => [`ways.${place}.${key}`, each] as const),
  };
}

/** What a file of version 1 holds, as version 2 writes it. Never throws. */
export function fromVersion1(found: Parts): Parts {
  const { units, label, thread, boxes, choices, readings, ways, ...others } = found;
  if (!isParts(boxes) && !Array.isArray(readings)) return {};
  const each = Array.isArray(ways) ? ways.map(fromWay) : [];
  const typed = [
    [LABEL, label] as const,
    [THREAD, thread] as const,
    ...placed('boxes', boxes, (name) => (BOXES.includes(name) ? name : undefined)),
    ...placed('choices', choices, (name) =>
      Object.hasOwn(CHOICES, name) ? CHOICES[name] : undefined,
    ),
    ...each.flatMap((way) => way.others),
  ];
  const tables = [
    ['readings', withColumns(READING_COLUMNS, readings)] as const,
    ['ways', Array.isArray(ways) ? [WAY_COLUMNS, ...each.map(({ row }) => row)] : ways] as const,
    ...each.flatMap((way) => way.tables),
  ];
  return {
    ...others,
    units,
    typed: Object.fromEntries(typed),
    tables: Object.fromEntries(tables.filter(([, table]) => table !== undefined)),
  };
}
