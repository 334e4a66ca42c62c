import { describe, expect, it } from 'vitest';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { beyondWords, untriedWords } from '../../../src/worksheet/words/setting-words.ts';

const said = (torqueHigh: number, top?: number, shown = shownIn('metric')) =>
  untriedWords({ torque: 40, torqueHigh }, top, shown).replace(/[\u00a0\u202f]/g, ' ');

describe('a range of torques', () => {
  it('that passes the highest reading says how far was tried', () => {
    expect(said(52, 45)).toBe(' (your readings end at 45.0 N·m)');
    expect(said(52, 45, shownIn('us'))).toBe(' (your readings end at 33.2 ft·lbf)');
  });

  it('about a torque above the readings says nothing: that is told as provisional', () =>
    expect(said(52, 39)).toBe(''));

  it('that stays within the readings, or has none, says nothing', () => {
    expect(said(45, 45)).toBe('');
    expect(said(52)).toBe('');
  });
});

describe('a torque above the highest reading', () => {
  const beyond = (top?: number, shown = shownIn('metric')) =>
    beyondWords({ torque: 32.7 }, top, shown).replace(/[\u00a0\u202f]/g, ' ');

  it('says how far was measured and what to do first', () => {
    expect(beyond(32)).toBe(
      ': provisional (your readings end at 32.0 N·m). Measure up to 32.7 N·m first.',
    );
    expect(beyond(32, shownIn('us'))).toBe(
      ': provisional (your readings end at 23.6 ft·lbf). Measure up to 24.1 ft·lbf first.',
    );
  });

  it('says only what to do while no reading tells a stress', () =>
    expect(beyond()).toBe(': provisional. Measure up to 32.7 N·m first.'));
});
