import { describe, expect, it } from 'vitest';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { untriedWords } from '../../../src/worksheet/words/setting-words.ts';

const said = (torqueHigh: number, top?: number, shown = shownIn('metric')) =>
  untriedWords({ torqueHigh }, top, shown).replace(/[\u00a0\u202f]/g, ' ');

describe('a range of torques', () => {
  it('that passes the highest reading says where nobody has tried', () => {
    expect(said(52, 45)).toBe(' (nothing above 45.0 N·m was tried)');
    expect(said(52, 45, shownIn('us'))).toBe(' (nothing above 33.2 ft·lbf was tried)');
  });

  it('that stays within the readings, or has none, says nothing', () => {
    expect(said(45, 45)).toBe('');
    expect(said(52)).toBe('');
  });
});
