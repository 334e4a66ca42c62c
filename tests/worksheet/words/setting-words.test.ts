import { describe, expect, it } from 'vitest';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { untriedWords } from '../../../src/worksheet/words/setting-words.ts';

const said = (torqueHigh: number, top?: number, shown = shownIn('metric')) =>
  untriedWords({ torque: 40, torqueHigh }, top, shown).replace(/[\u00a0\u202f]/g, ' ');

describe('a range of torques', () => {
  it('that passes the highest reading says how far was tried', () => {
    expect(said(52, 45)).toBe(' (you measured only up to 45.0 N·m)');
    expect(said(52, 45, shownIn('us'))).toBe(' (you measured only up to 33.2 ft·lbf)');
  });

  it('about a torque above the readings says nothing: that is told as provisional', () =>
    expect(said(52, 39)).toBe(''));

  it('that stays within the readings, or has none, says nothing', () => {
    expect(said(45, 45)).toBe('');
    expect(said(52)).toBe('');
  });
});
