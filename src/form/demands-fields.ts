/**
 * The boxes of the window of tension: what the band must serve, and what the reader grants it.
 * Units: SI.
 * Source: `usual` ranges are common practice, no source; what stands for an empty box is that of the core's empty worksheet.
 */
import { emptyWorksheet } from '../core/worksheet.ts';
import { field } from './field.ts';

const { demands: unless } = emptyWorksheet;

/** By their paths on the form. */
export const DEMANDS_FIELDS = {
  'demands.guideSpan': field('Between the guides', 'length', [0.1, 1.5], {
    hint: 'As you usually set them.',
  }),
  'demands.speed': field('Band speed', 'speed', [5, 60]),
  'demands.power': field('Power at the band', 'power', [1e3, 1e5], {
    hint: 'Of engine or motor, at most.',
  }),
  'demands.push': field('A push at the teeth', 'force', [5, 200], { whenEmpty: unless.push }),
  'demands.movement': field('The most it may move them', 'thickness', [0.5e-3, 20e-3], {
    of: 'A push at the teeth',
    whenEmpty: unless.movement,
  }),
  'demands.rimFriction': field('Friction of band on rim', 'ratio', [0.1, 0.5], {
    hint: 'Left empty, the lowest usual friction counts, to be careful.',
    whenEmpty: unless.rimFriction,
  }),
  'demands.lifeKept': field('Part of today’s life to keep', 'percent', [0.1, 2], {
    whenEmpty: unless.lifeKept,
  }),
  'demands.lifeExponent': field('Exponent of life', 'ratio', [6, 12], {
    whenEmpty: unless.lifeExponent,
  }),
  'demands.warming': field('Band warmer than when set', 'temperatureDifference', [1, 40], {
    limit: 'notNegative',
    whenEmpty: unless.warming,
  }),
} as const;
