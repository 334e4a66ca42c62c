/** What of the log is drawn: entries with a day and a torque, in the order of their days. */
import { describe, expect, it } from 'vitest';
import { dayOf, dayText, logEntries } from '../../../src/worksheet/log/entries.ts';

describe('the log', () => {
  it('reads days as it writes them', () => {
    for (const text of ['2026-01-31', '2024-02-29', '1999-12-01'])
      expect(dayText(new Date(dayOf(text) ?? Number.NaN))).toBe(text);
  });

  it.each(['2026-02-30', '2026-13-01', '29.11.2026', 'Monday', ''])('takes %j for no day', (text) =>
    expect(dayOf(text)).toBeUndefined(),
  );

  it('draws entries with both, by their days, in any unit', () => {
    const cells = [
      ['2026-11-02', '15', '', ''],
      ['2026-10-01', '11 ft·lb', '0.2', 'greased'],
      ['2026-10-02', 'tight', '', ''],
      ['soon', '12', '', ''],
    ];
    const entries = logEntries(cells, 'metric');
    expect(entries.map(({ day }) => dayText(new Date(day)))).toEqual(['2026-10-01', '2026-11-02']);
    expect(entries[0]?.torque).toBeCloseTo(14.914, 3); // 11 ft·lbf, NIST SP 811: 1.355 818 N·m each
    expect(entries[1]?.torque).toBe(15);
  });
});
