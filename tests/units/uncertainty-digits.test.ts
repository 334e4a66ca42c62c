import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shownUncertainty } from '../../src/units/uncertainty-digits.ts';

describe('shownUncertainty', () => {
  it.each([
    [8.3, 9, 0],
    [9, 9, 0],
    [0.1 + 0.2, 0.3, 1],
    [2.01, 3, 0],
    [1.01, 1.1, 1],
    [1.3, 1.3, 1],
    [1.99, 2, 1],
    [9.2, 10, 0],
    [0.032, 0.04, 2],
    [430, 500, -2],
    [1230, 1300, -2],
    [1e-30, 1e-12, 12],
  ])('shows %f as %f, to %i decimals', (uncertainty, shown, decimals) =>
    expect(shownUncertainty(uncertainty)).toEqual({ uncertainty: shown, decimals }),
  );

  it('never understates, and overstates by at most half', () =>
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e12, noNaN: true }), (uncertainty) => {
        const ratio = shownUncertainty(uncertainty).uncertainty / uncertainty;
        expect(ratio).toBeGreaterThan(1 - 1e-6);
        expect(ratio).toBeLessThanOrEqual(1.5);
      }),
    ));
});
