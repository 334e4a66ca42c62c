/**
 * Version 1 of the file, as the site wrote it first, and the form of that time. Everything here is frozen: no name,
 * limit or order is taken from the form of today, so that a file of yesterday opens whatever becomes of it.
 * Units: as typed.
 * Source: definition.
 */
import * as z from 'zod/mini';

const BOXES = [
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
] as const;

/** The paths that version 2 has for what version 1 kept apart. */
const CHOICES = {
  thread: 'tensioner.thread.kind',
  form: 'tensioner.thread.form',
  losses: 'tensioner.friction.kind',
  collar: 'tensioner.collar.kind',
  dial: 'rig.dialRuns',
  bar: 'rig.barMaterial',
  otherBand: 'otherBand.kind',
} as const;
const LABEL = 'label';
const THREAD = 'tensioner.thread.designation';
const READING_COLUMNS = ['torque', 'dial', 'wholeTurns', 'turns'];
const WAY_COLUMNS = ['name', 'torque'];
const DIAL_COLUMNS = ['dial', 'wholeTurns'];

const typed = z.string().check(z.maxLength(200));
const choice = (...options: [string, ...string[]]) => z.optional(z.enum(options));
const rows = (cells: number, most: number) =>
  z.array(z.array(typed).check(z.maxLength(cells))).check(z.maxLength(most));

const version1 = z.object({
  version: z.literal(1),
  units: z.record(z.string().check(z.maxLength(30)), z.string().check(z.maxLength(20))),
  label: typed,
  thread: typed,
  boxes: z.partialRecord(z.enum(BOXES), typed),
  choices: z.object({
    thread: choice('designation', 'own'),
    form: choice('trapezoidal', 'acme', 'square', 'v60'),
    losses: choice('friction', 'efficiency'),
    collar: choice('none', 'collar'),
    dial: choice('backwards', 'forwards'),
    bar: choice('steel', 'aluminium', 'wood'),
    otherBand: choice('none', 'some'),
  }),
  readings: rows(4, 60),
  ways: z
    .array(z.object({ name: typed, torque: typed, readings: rows(2, 12) }))
    .check(z.maxLength(12)),
});

/** What a file of version 1 holds, as version 2 writes it; undefined where it is none. Never throws. */
export function fromVersion1(value: unknown): unknown {
  const { data } = version1.safeParse(value);
  if (!data) return undefined;
  const choices = Object.entries(data.choices).map(([name, chosen]) => [
    CHOICES[name as keyof typeof CHOICES],
    chosen,
  ]);
  const ways = data.ways.map(({ name, torque }) => [name, torque]);
  const ofWays = data.ways.map(({ readings }, place) => [
    `ways.${place}.readings`,
    [DIAL_COLUMNS, ...readings],
  ]);
  return {
    version: 2,
    units: data.units,
    typed: {
      ...data.boxes,
      ...Object.fromEntries(choices),
      [LABEL]: data.label,
      [THREAD]: data.thread,
    },
    tables: {
      readings: [READING_COLUMNS, ...data.readings],
      ways: [WAY_COLUMNS, ...ways],
      ...Object.fromEntries(ofWays),
    },
  };
}
