import { describe, expect, it } from 'vitest';
import { evaluateWorksheet } from '../../../src/core/worksheet.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { torqueSaid } from '../../../src/worksheet/words/answer-words.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';

const results = evaluateWorksheet(millA); // to 14.5 N·m
const said = (torque: number, used?: number) =>
  torqueSaid(torque, {
    result: (name) => results[name],
    shown: () => shownIn('metric'),
    worksheet: () => ({ ...millA, use: { torque: used } }),
  }).replace(/[\u00a0\u202f]/g, ' ');

describe('a torque that a stress belongs to', () => {
  it('is told from the others by whose it is', () => {
    expect(said(14.5)).toBe('14.5 N·m, your highest reading');
    expect(said(10, 10)).toBe('10.0 N·m, the torque you use now');
    expect(said(10)).toBe('10.0 N·m');
  });

  it('is said to be above the readings where it is', () =>
    expect(said(20, 20)).toBe('20.0 N·m, the torque you use now (your readings end at 14.5 N·m)'));
});
