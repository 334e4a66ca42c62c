/**
 * The boxes of a hydraulic cylinder and its gauge.
 * Units: SI.
 * Source: `usual` ranges are common practice, no source; what stands for an empty box is that of the core.
 */
import {
  emptyWorksheet,
  mostNoLoadShare,
  usualGaugeClass,
  usualGaugeTop,
} from '../core/worksheet.ts';
import { field } from './field.ts';

const { cylinder: unless } = emptyWorksheet.tensioner;
const orZero = { limit: 'notNegative' } as const;
const inPercent = (share: number) => `${100 * share} %`;

/** By their paths on the form. */
export const CYLINDER_FIELDS = {
  'tensioner.cylinder.pistonDiameter': field('Piston diameter', 'length', [0.02, 0.12], {
    hint: 'The bore of the cylinder, by its plate or list.',
  }),
  'tensioner.cylinder.rodDiameter': field('Rod diameter', 'length', [0.008, 0.08], {
    ...orZero,
    hint: 'Only if the cylinder pulls, with oil on the rod’s side. Left empty: it pushes.',
  }),
  'tensioner.cylinder.gaugeTop': field('The gauge goes up to', 'pressure', [1e6, 7e7], {
    hint: `Left empty: ${usualGaugeTop} times your pressure.`,
  }),
  'tensioner.cylinder.gaugeClass': field('Its class', 'percent', [0.0025, 0.05], {
    of: 'Gauge',
    hint: `On its face: 1.6 means that it may be off by 1.6 % of its full scale. Left empty: ${inPercent(usualGaugeClass)}.`,
  }),
  'tensioner.cylinder.sealLow': field('lowest', 'percent', [0, 0.2], {
    ...orZero,
    of: 'Friction of the seal',
  }),
  'tensioner.cylinder.sealHigh': field('highest', 'percent', [0, 0.2], {
    ...orZero,
    of: 'Friction of the seal',
  }),
  'tensioner.cylinder.noLoadPressure': field('No-load pressure', 'pressure', [0, 2e6], {
    ...orZero,
    hint: `Locked out, band slack: pump until the cylinder just moves. Left empty: anything up to ${inPercent(mostNoLoadShare)} of the pressure.`,
  }),
  'tensioner.cylinder.noLoadPressureUncertainty': field('give or take', 'pressure', [0, 1e6], {
    ...orZero,
    of: 'No-load pressure',
    hint: 'Half the difference between two tries.',
    whenEmpty: unless.noLoadPressureUncertainty,
  }),
} as const;
