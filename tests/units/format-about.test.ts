/** Defaults that are round in metric units, in either system. */
import { describe, expect, it } from 'vitest';
import { formatAbout } from '../../src/units/format-about.ts';
import { fromSi } from '../../src/units/si-value.ts';

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

describe('a number that is round in metric units', () => {
  it.each([
    [0.1, 'torque', '0.1 N·m', 'about 0.074 ft·lbf'],
    [205e9, 'modulus', '205 GPa', 'about 29.7 Mpsi'],
    [5e9, 'modulus', '5 GPa', 'about 0.73 Mpsi'],
    [1e-3, 'length', '1 mm', 'about 0.0394 in'],
    [1100e6, 'stress', '1100 MPa', 'about 160 000 psi'],
    [30, 'force', '30 N', 'about 6.7 lbf'],
    [15, 'temperatureDifference', '15 °C', '27 °F'],
    [0.8, 'percent', '80 %', '80 %'],
    [0, 'torque', '0 N·m', '0 ft·lbf'],
  ] as const)('%s %s is %s, %s', (value, kind, metric, us) => {
    expect(plain(formatAbout(value, kind, 'metric'))).toBe(metric);
    expect(plain(formatAbout(value, kind, 'us'))).toBe(us);
  });

  it('is never said more than 0.7 % off where three digits can say it', () => {
    for (let step = 0; step < 900; step += 1) {
      const value = (100 + step) / 1000;
      const said = Number(/[\d.]+/.exec(formatAbout(value, 'torque', 'us'))?.[0]);
      expect(Math.abs(said / fromSi(value, 'torque', 'us') - 1)).toBeLessThanOrEqual(0.007);
    }
  });
});
