/**
 * The bench's mill and rows as a sheet of the worksheet, and the link that opens it there. Fetched when it is asked for.
 * Units: SI in the view; text in the reader's units, dial readings as they were typed.
 * Source: definition.
 */
import { markOf, turnOf } from '../../figures/dial/faces.ts';
import { documentOf, type WorksheetDocument } from '../../form/document.ts';
import { typedFrom } from '../../form/typed.ts';
import { bareUnits, isBareNumber } from '../../form/units.ts';
import { formatInput, formatParts } from '../../units/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { packed } from '../../worksheet/io/packing.ts';
import { lastNote } from '../tries/heard.ts';
import { LEVEL_WORDS } from '../words/level-words.ts';
import { dialUnits, type View } from './view.ts';

type Pair = readonly [path: string, text: string];
type Writer = (path: string, value: number, kind: QuantityKind) => Pair;

const writer =
  (system: UnitSystem): Writer =>
  (path, value, kind) => [path, formatInput(value, kind, system)];

/** A torque as the owner's card shows it, to the same digits. */
const toldTorque = (path: string, torque: number, system: UnitSystem): Pair => [
  path,
  formatParts(torque, 'torque', system).number,
];

/** The mill, as the owner tells it or as it was measured. */
function millPairs({ mill, bench }: View, write: Writer): readonly Pair[] {
  const { known, told } = mill;
  const { bodyWidth, thickness } = bench.isMeasured ? known : told;
  const { outer, inner } = told.washer;
  const [name] = LEVEL_WORDS[bench.level];
  return [
    ['label', `Practice mill ${bench.seed}, ${name.toLowerCase()}`],
    write('mill.wheelDiameter1', known.wheelDiameter, 'length'),
    write('mill.centreDistance', known.centreDistance, 'length'),
    write('band.bodyWidth', bodyWidth, 'length'),
    write('band.widthOverTeeth', bodyWidth + told.teeth, 'length'),
    write('band.thickness', thickness, 'thickness'),
    ['band.thicknessFrom', bench.isMeasured ? 'micrometer' : 'label'],
    ['tensioner.thread.designation', known.screwThread],
    ['tensioner.friction.kind', 'greased'],
    ['tensioner.collar.kind', known.collarIsBearing ? 'bearing' : 'washer'],
    write('tensioner.collar.outerDiameter', outer, 'length'),
    write('tensioner.collar.innerDiameter', inner, 'length'),
    toldTorque('use.torque', told.usualTorque, bench.system),
  ];
}

/** The rig; its dial is told in its own units. */
function rigPairs({ mill, face }: View, write: Writer): readonly Pair[] {
  const { known, told } = mill;
  const units = dialUnits(face);
  const ofDial = (path: string, value: number): Pair => [
    path,
    `${formatInput(value, 'stretch', units)} ${unitLabel('stretch', units)}`,
  ];
  return [
    write('rig.gaugeLength', known.gaugeLength, 'length'),
    ofDial('rig.graduation', markOf(face)),
    ofDial('rig.readTo', known.dialStep),
    ofDial('rig.travelPerTurn', turnOf(face)),
    ['rig.dialRuns', told.runsBackwards ? 'backwards' : 'forwards'],
    ['rig.dialWritten', 'together'],
  ];
}

/** A reading of the dial as it was typed, with its unit where the worksheet's own is another. */
function dialText(text: string, { bench, face }: View): string {
  const [own, shown] = [dialUnits(face), bench.system].map((system) =>
    unitLabel('stretch', system),
  );
  return own === shown || !isBareNumber(text) ? text : `${text.trim()} ${own}`;
}

function rowPairs(view: View, write: Writer): readonly Pair[] {
  const rows = view.rows.filter(({ slack }) => slack !== 'letOff'); // its torque fell: not one of the line
  return rows.flatMap(({ series, torque, dial }, at): readonly Pair[] => [
    write(`readings.${at}.torque`, torque, 'torque'),
    [`readings.${at}.dial`, dialText(dial, view)],
    [`readings.${at}.series`, String(series + 1)],
  ]);
}

/** The last note that was heard. */
function notePairs(view: View, write: Writer): readonly Pair[] {
  const heard = lastNote(view);
  if (!heard) return [];
  return [
    write('second.torque', heard.torque, 'torque'),
    write('second.span', view.mill.known.centreDistance, 'length'),
    write('second.note', heard.note, 'frequency'),
  ];
}

/** The no-load torque as the owner told it, or as the learner typed it. */
function dragPairs({ mill, bench }: View): readonly Pair[] {
  const { dragTorque } = mill.told;
  const typed = bench.typed.drag.trim();
  if (typed !== '') return [['tensioner.dragTorque', typed]];
  return dragTorque === undefined
    ? []
    : [toldTorque('tensioner.dragTorque', dragTorque, bench.system)];
}

/** The sheet. */
export function carriedDocument(view: View): WorksheetDocument {
  const { system } = view.bench;
  const write = writer(system);
  const parts = [millPairs, rigPairs, dragPairs, rowPairs, notePairs];
  return documentOf(typedFrom(parts.flatMap((part) => part(view, write))), bareUnits(system));
}

/** The fragment of the link that opens it on the worksheet, without `#`. */
export const carriedFragment = (view: View): Promise<string> => packed(carriedDocument(view));
