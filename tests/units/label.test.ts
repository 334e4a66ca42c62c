import { describe, expect, it } from 'vitest';
import { unitLabel } from '../../src/units/label.ts';

describe('unitLabel', () => {
  it.each([
    ['stress', 'MPa', 'psi'],
    ['modulus', 'GPa', 'Mpsi'],
    ['torque', 'N·m', 'ft·lbf'],
    ['stiffness', 'kN/mm', 'lbf/in'],
    ['temperatureDifference', '°C', '°F'],
    ['turns', 'turns', 'turns'],
    ['ratio', '', ''],
  ] as const)('of %s is %s or %s', (kind, metric, us) => {
    expect(unitLabel(kind, 'metric')).toBe(metric);
    expect(unitLabel(kind, 'us')).toBe(us);
  });

  it('is singular after one where it is a word', () => {
    expect(unitLabel('turns', 'us', '1')).toBe('turn');
    expect(unitLabel('turns', 'us', '1.5')).toBe('turns');
  });
});
