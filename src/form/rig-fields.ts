/**
 * The boxes of the bar and its dial.
 * Units: SI.
 * Source: `usual` ranges are common practice, no source; what stands for an empty box is that of the core's empty worksheet.
 */
import type { BarMaterial, DialWritten } from '../core/worksheet.ts';
import { emptyWorksheet } from '../core/worksheet.ts';
import { choice, field } from './field.ts';

const { rig } = emptyWorksheet;
const orZero = { limit: 'notNegative' } as const;
const anyNumber = { limit: 'finite' } as const;

/** By their paths on the form. */
export const RIG_FIELDS = {
  'rig.gaugeLength': field('Gauge length', 'length', [0.15, 1.5], {
    hint: 'Between the inner edges of the clamps.',
  }),
  'rig.gaugeLengthHalfWidth': field('give or take', 'length', [0, 0.01], {
    of: 'Gauge length',
    ...orZero,
    whenEmpty: rig.gaugeLengthHalfWidth,
  }),
  'rig.graduation': field('One graduation of the dial', 'stretch', [1e-6, 50e-6]),
  'rig.readTo': field('You read it to', 'stretch', [0.5e-6, 50e-6], {
    of: 'Dial',
    hint: 'Leave it empty for one graduation.',
  }),
  'rig.dialRuns': choice('As the band stretches, the number on the dial', {
    unasked: 'I have not said yet',
    backwards: 'falls',
    forwards: 'rises',
  }),
  'rig.dialWritten': choice<DialWritten>('How do you write a reading down?', {
    unasked: 'I have not said yet',
    handOnly: 'where the hand points; whole turns in a column of their own',
    together: 'turns and hand together, as one number',
  }),
  'rig.travelPerTurn': field('Travel in one turn of the hand', 'stretch', [0.1e-3, 5e-3], {
    hint: 'Needed if the hand makes a full turn or more.',
  }),
  'rig.barMaterial': choice<BarMaterial>('Material of the bar', {
    steel: 'steel',
    aluminium: 'aluminum',
    wood: 'wood',
  }),
  'rig.warmed': field('Warmer at the top than at zero', 'temperatureDifference', [-15, 15], {
    ...anyNumber,
    hint: 'Band and bar together, by a thermometer. A steel bar grows with the band.',
  }),
  'rig.repeatability': field('It repeats to', 'stretch', [1e-6, 50e-6], {
    hint: 'Let go and set again five times: the standard deviation, if you took it.',
  }),
  'rig.barWeight': field('Weight of the bar', 'force', [0, 60], {
    ...orZero,
    hint: 'Only if the strand is level.',
  }),
  'rig.barHeight': field('Its height above the band', 'length', [-0.1, 0.1], {
    ...anyNumber,
    hint: 'Middle of the bar to middle of the band; negative below it.',
  }),
} as const;
