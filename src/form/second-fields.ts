/**
 * The boxes of the second opinions.
 * Units: SI.
 * Source: `usual` ranges are common practice, no source; what stands for an empty box is that of the core's empty worksheet.
 */
import type { FreeSpanEnds } from '../core/worksheet.ts';
import { emptyWorksheet } from '../core/worksheet.ts';
import { choice, field } from './field.ts';

const { second } = emptyWorksheet;

/** By their paths on the form. */
export const SECOND_FIELDS = {
  'second.torque': field('Torque then', 'torque', [0.3, 150]),
  'second.pressure': field('Pressure then', 'pressure', [5e5, 4e7]),
  'second.span': field('Free span', 'length', [0.15, 4]),
  'second.ends': choice<FreeSpanEnds>('What holds the span', {
    wheels: 'the wheels',
    guides: 'roller guides',
  }),
  'second.note': field('Its note', 'frequency', [15, 900]),
  'second.harmonic': field('Harmonic', 'count', [1, 6], { whenEmpty: second.harmonic }),
  'second.force': field('Push at the middle', 'force', [1, 500]),
  'second.deflection': field('It yields by', 'thickness', [0.3e-3, 60e-3]),
  'second.tightening': field('To tighten', 'torque', [0.3, 150], { of: 'Turning torque' }),
  'second.loosening': field('To loosen', 'torque', [0.1, 150], { of: 'Turning torque' }),
  'second.pumping': field('Pumping', 'pressure', [5e5, 4e7], { of: 'Pressure' }),
  'second.lettingDown': field('Letting down', 'pressure', [2e5, 4e7], { of: 'Pressure' }),
} as const;
