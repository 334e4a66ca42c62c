/** What the makers allow, on the card: a row in the block of each band. */
import { describe, expect, it } from 'vitest';
import { evaluateWorksheet, loadName, type Worksheet } from '../../../src/core/worksheet.ts';
import { limitRow } from '../../../src/worksheet/card/limits.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { millD } from '../../core/worksheet/fixtures/hydraulic-mill.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';
import { plain, shown, unread } from './invented.ts';

const none = { makerLimitStress: undefined, makerLimitWheelForce: undefined };

describe('what the makers allow', () => {
  const limited = (target: Partial<Worksheet['target']>, mill: Worksheet = millA) => {
    const worksheet = { ...mill, target: { ...mill.target, ...target } };
    const { allowedLoad: allowed } = evaluateWorksheet(worksheet);
    const load = shownIn('metric', loadName(mill.tensioner));
    const row = limitRow(worksheet.target, { allowed, set: undefined }, load);
    return { allowed, row: row?.map(plain) ?? [] };
  };

  it('is the torque not to pass, never rounded up, and the number that they give', () => {
    for (const limit of [80e6, 83e6, 87e6, 91e6]) {
      const { allowed, row } = limited({ ...none, makerLimitStress: limit });
      expect(row[0]).toMatch(/^Never above \([\d.]+ MPa\)$/);
      const torque = Number.parseFloat(row[1] ?? '');
      expect(torque).toBeLessThanOrEqual(allowed?.load ?? 0);
      expect(torque).toBeGreaterThan((allowed?.load ?? 0) - 0.1);
    }
  });

  it('is said to be calculated where no reading tells it', () => {
    const far = { ...none, makerLimitStress: 170e6, makerLimitWheelForce: 12000 };
    const both = '170 MPa and 12 000 N on the wheel';
    expect(limited(far).row).toEqual([
      `Never above (${both})`,
      expect.stringMatching(/^[\d.]+ N·m$/),
    ]);
    expect(limited(far, unread).row[0]).toBe(`Never above (${both}, calculated)`);
    expect(limited({ ...none, makerLimitStress: 300e6 }, millD).row[1]).toMatch(/^\d+ bar$/);
  });

  it('says that a torque above it may pass the limit, and calls for none on the other side of it', () => {
    const known = { ...none, makerLimitStress: 112e6 };
    const said = (set: number) => limitRow(known, { allowed: { load: 12.39 }, set }, shown);
    expect(said(12.5)?.map(plain)).toEqual(['May pass 112 MPa above', '12.3 N·m']);
    expect(said(12.3)?.map(plain)).toEqual(['Never above (112 MPa)', '12.3 N·m']);
  });

  it('is their number alone where no torque is known, and nothing without one', () => {
    const unknown = { allowed: undefined, set: 11 };
    const known = { ...none, makerLimitStress: 170e6 };
    expect(limitRow(known, unknown, shown)?.map(plain)).toEqual(['The makers allow', '170 MPa']);
    expect(limitRow(none, unknown, shown)).toBeUndefined();
  });
});
