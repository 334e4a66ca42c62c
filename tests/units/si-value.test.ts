import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { QUANTITY_KINDS } from '../../src/units/kinds.ts';
import { fromSi, toSi } from '../../src/units/si-value.ts';

describe('fromSi and toSi', () => {
  it('turn 20 ft·lbf into 27.116 N·m and back (NIST SP 811, B.8: 1.355 818)', () => {
    expect(toSi(20, 'torque', 'us')).toBeCloseTo(20 * 1.355818, 5);
    expect(fromSi(27.116358966628, 'torque', 'us')).toBeCloseTo(20, 12);
  });

  it('undo each other within rounding, and keep sign and order', () => {
    const amounts = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    const kinds = fc.constantFrom(...QUANTITY_KINDS);
    const systems = fc.constantFrom('metric' as const, 'us' as const);
    fc.assert(
      fc.property(amounts, kinds, systems, (amount, kind, system) => {
        const back = fromSi(toSi(amount, kind, system), kind, system);
        expect(Math.abs(back - amount)).toBeLessThanOrEqual(1e-15 * Math.abs(amount) + 1e-300);
        expect(toSi(amount + 1, kind, system)).toBeGreaterThan(toSi(amount, kind, system));
      }),
    );
  });
});
