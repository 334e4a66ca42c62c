/**
 * Every box and every choice of the worksheet, by its path on the form: what it is called, what it takes, what it may
 * hold. A `*` stands for the number of a row, counted from 0.
 * Units: SI.
 * Source: `usual` ranges are common practice, no source; what stands for an empty box is that of the
 * core's empty worksheet.
 */

import { planLimits } from '../core/plan.ts';
import type {
  ThicknessFrom,
  WorksheetCollar,
  WorksheetFriction,
  WorksheetStrands,
  WorksheetTensionerKind,
  WorksheetThreadForm,
} from '../core/worksheet.ts';
import { clampsFromWheels, emptyWorksheet, mostDragShare, wrenchScale } from '../core/worksheet.ts';
import { toSi } from '../units/si-value.ts';
import { CYLINDER_FIELDS } from './cylinder-fields.ts';
import { DEMANDS_FIELDS } from './demands-fields.ts';
import { choice, type Field, field, words } from './field.ts';
import { RIG_FIELDS } from './rig-fields.ts';
import { SECOND_FIELDS } from './second-fields.ts';

const { band, tensioner, target } = emptyWorksheet;
const orZero = { limit: 'notNegative' } as const;
const anyNumber = { limit: 'finite' } as const;

/** How far, at least, clamps stay from wheels and guides, m: nearer a coil-set band is straight only late (derived in coil set, core/false-zero). Round in either system. */
export const CLAMPS_FROM_WHEELS = {
  metric: clampsFromWheels,
  us: toSi(10, 'length', 'us'),
} as const;

/** The form. */
export const FIELDS = {
  label: words('Name', 80),
  'mill.strands': choice<WorksheetStrands>('What is pulled', {
    two: 'a band round two wheels',
    one: 'one strip, no wheels',
  }),
  'mill.stripLength': field('Length of the strip', 'length', [0.3, 4], {
    hint: 'From clamp to clamp.',
  }),
  'mill.wheelDiameter1': field('Wheel diameter', 'length', [0.25, 1.5], {
    hint: 'Where the band runs, with the tire.',
  }),
  'mill.wheelDiameter2': field('The other wheel', 'length', [0.25, 1.5], {
    hint: 'Leave it empty if it is the same as the first.',
  }),
  'mill.centreDistance': field('Between wheel centers', 'length', [0.4, 5]),
  'band.bodyWidth': field('Body width', 'length', [0.01, 0.18], {
    hint: 'From the deepest gullet to the back. Take the mean of five places.',
  }),
  'band.widthOverTeeth': field('Width over the teeth', 'length', [0.012, 0.2], {
    hint: 'To check the body width, and for the window.',
  }),
  'band.thickness': field('Thickness', 'thickness', [0.5e-3, 3e-3], {
    hint: 'Take five readings and write them all, with spaces between.',
    several: true,
  }),
  'band.thicknessFrom': choice<ThicknessFrom>('How do you know the thickness?', {
    unasked: 'I have not said yet',
    micrometer: 'measured with a micrometer',
    caliper: 'measured with a caliper',
    label: 'from a label or a list',
  }),
  'band.youngsModulus': field('Young’s modulus', 'modulus', [180e9, 220e9], {
    whenEmpty: band.youngsModulus,
  }),
  'band.youngsModulusHalfWidth': field('give or take', 'modulus', [0, 20e9], {
    of: 'Young’s modulus',
    ...orZero,
    whenEmpty: band.youngsModulusHalfWidth,
  }),
  'tensioner.kind': choice<WorksheetTensionerKind>('What tightens it?', {
    screw: 'a screw',
    cylinder: 'a hydraulic cylinder',
  }),
  ...CYLINDER_FIELDS,
  'tensioner.thread.kind': choice('Thread of the screw', {
    designation: 'by its name',
    own: 'by its own measures',
  }),
  'tensioner.thread.designation': words('Thread', 40, 'Such as Tr20x4, M24, 1-5 Acme, 5/8-11 UNC.'),
  'tensioner.thread.form': choice<WorksheetThreadForm>('Shape of the thread', {
    trapezoidal: 'trapezoidal, 30°',
    acme: 'Acme, 29°',
    square: 'square',
    v60: 'V, 60°',
  }),
  'tensioner.thread.outsideDiameter': field('Outside diameter', 'length', [0.006, 0.1], {
    of: 'Thread',
  }),
  'tensioner.thread.pitch': field('Pitch', 'thickness', [0.5e-3, 20e-3], {
    of: 'Thread',
    hint: 'From one crest to the next. Turn the screw through only with the band off.',
  }),
  'tensioner.starts': field('Starts', 'count', [1, 8], { whenEmpty: tensioner.starts }),
  'tensioner.advantage': field('Force on the wheel ÷ thrust', 'ratio', [0.2, 10], {
    hint: 'Only if there is a lever between, or more than one.',
    whenEmpty: tensioner.advantage,
  }),
  'tensioner.friction.kind': choice<WorksheetFriction['kind']>('How is the thread kept?', {
    unknown: 'I don’t know',
    greased: 'greased or oiled',
    dry: 'dry',
    friction: 'I know its friction',
    efficiency: 'I know the efficiency of the screw',
  }),
  'tensioner.friction.low': field('lowest', 'ratio', [0.02, 1], { of: 'Friction or efficiency' }),
  'tensioner.friction.high': field('highest', 'ratio', [0.02, 1], { of: 'Friction or efficiency' }),
  'tensioner.collar.kind': choice<WorksheetCollar['kind']>(
    'What lies under the nut or the screw’s head',
    {
      unknown: 'I don’t know',
      washer: 'a washer, or steel on steel',
      bearing: 'a ball bearing',
      none: 'nothing that rubs',
    },
  ),
  'tensioner.collar.frictionLow': field('lowest', 'ratio', [0, 0.4], {
    ...orZero,
    of: 'Friction of the washer',
  }),
  'tensioner.collar.frictionHigh': field('highest', 'ratio', [0, 0.4], {
    ...orZero,
    of: 'Friction of the washer',
  }),
  'tensioner.collar.outerDiameter': field('Outside diameter', 'length', [0.01, 0.2], {
    of: 'Washer or bearing',
  }),
  'tensioner.collar.innerDiameter': field('Hole', 'length', [0, 0.15], {
    ...orZero,
    of: 'Washer or bearing',
  }),
  'tensioner.dragTorque': field('No-load torque', 'torque', [0, 10], {
    ...orZero,
    hint: `Locked out, band slack: turn a small part of a turn, and stop where it gets stiff. Left empty: anything up to ${100 * mostDragShare} % of the torque.`,
  }),
  'tensioner.dragTorqueUncertainty': field('give or take', 'torque', [0, 3], {
    ...orZero,
    of: 'No-load torque',
    hint: 'Try twice: half the difference goes here, the middle goes above.',
    whenEmpty: tensioner.dragTorqueUncertainty,
  }),
  'tensioner.wrenchClass': field('The wrench may be off by', 'percent', [0.005, 0.2], {
    hint: `As its maker’s or its tester’s sheet says. Left empty: ${100 * wrenchScale} %, as ISO 6789 allows many that click (from memory).`,
  }),
  'use.torque': field('The torque you tighten to now', 'torque', [0.3, 150]),
  'use.pressure': field('The pressure you pump to now', 'pressure', [5e5, 4e7]),
  ...RIG_FIELDS,
  'plan.topTorque': field('Top torque', 'torque', [0.3, 150], {
    of: 'Plan',
    hint: 'No more than a maker allows. Left empty: enough for the target.',
  }),
  'plan.firstTorque': field('First torque', 'torque', [0, 150], {
    ...orZero,
    of: 'Plan',
    hint: 'Left empty: a tenth of the load.',
  }),
  'plan.topPressure': field('Top pressure', 'pressure', [5e5, 4e7], {
    of: 'Plan',
    hint: 'No more than a maker allows. Left empty: enough for the target.',
  }),
  'plan.firstPressure': field('First pressure', 'pressure', [0, 4e7], {
    ...orZero,
    of: 'Plan',
    hint: 'Left empty: a tenth of the load.',
  }),
  'plan.steps': field('Steps in a series', 'count', planLimits.steps, {
    of: 'Plan',
    whenEmpty: 10,
  }),
  'plan.series': field('Series, one after the other', 'count', planLimits.series, {
    of: 'Plan',
    whenEmpty: 1,
  }),
  'readings.*.torque': field('Torque', 'torque', [0, 150], orZero),
  'readings.*.dial': field('Dial', 'stretch', [-0.05, 0.05], anyNumber),
  'readings.*.wholeTurns': field('Whole turns of the hand', 'count', [-50, 50], anyNumber),
  'readings.*.turns': field('Turns of the screw', 'turns', [-50, 100], anyNumber),
  'readings.*.series': field('Series', 'count', [1, 20], {
    hint: 'Leave it empty for the same series as the row above.',
  }),
  'readings.*.struck': words('Struck out', 80, 'Why this row is not to be used.'),
  'readings.*.pressure': field('Pressure', 'pressure', [0, 4e7], orZero),
  unitsBelow: words('Units', 120), // as answered, of numbers below one that names its own
  ...SECOND_FIELDS,
  'ways.*.name': words('A way of setting', 200),
  'ways.*.torque': field('Its torque', 'torque', [0.3, 150]),
  'ways.*.pressure': field('Its pressure', 'pressure', [5e5, 4e7]),
  'ways.*.readings.*.dial': field('Dial', 'stretch', [-0.05, 0.05], anyNumber),
  'ways.*.readings.*.wholeTurns': field('Whole turns', 'count', [-50, 50], anyNumber),
  'log.*.date': words('Date', 20),
  'log.*.torque': field('Torque', 'torque', [0.3, 150]),
  'log.*.dial': field('Dial moved', 'stretch', [0, 0.05], anyNumber),
  'log.*.note': words('By, and what was seen', 200),
  'log.*.pressure': field('Pressure', 'pressure', [5e5, 4e7]),
  'target.stress': field('Target stress', 'stress', [50e6, 200e6], {
    hint: 'The band maker’s number, if there is one.',
  }),
  'target.makerLimitStress': field('Band maker’s limit', 'stress', [50e6, 400e6]),
  'target.makerLimitWheelForce': field(
    'Mill maker’s limit, force on the wheel',
    'force',
    [1e3, 6e4],
  ),
  'target.yieldStrength': field('Yield strength of the band', 'stress', [600e6, 1800e6], {
    whenEmpty: target.yieldStrength,
  }),
  ...DEMANDS_FIELDS,
  'bands.*.name': words('Name of another band', 200),
  'bands.*.bodyWidth': field('Body width', 'length', [0.01, 0.18], {
    of: 'Other band',
    hint: 'From the deepest gullet to the back, not over the teeth.',
  }),
  'bands.*.thickness': field('Thickness', 'thickness', [0.5e-3, 3e-3], { of: 'Other band' }),
  'bands.*.targetStress': field('Target stress', 'stress', [50e6, 200e6], {
    of: 'Other band',
    hint: 'Leave it empty if it is the same as the first.',
  }),
  bandName: words('Name of the measured band', 40),
  measuredOn: words('Measured on', 40),
  grease: words('Grease on thread and washer', 80),
  wrench: words('Torque wrench', 80),
  gauge: words('Pressure gauge', 80),
} as const satisfies Readonly<Record<string, Field>>;
