import { describe, expect, it } from 'vitest';
import { screwOnThread } from '../../../src/core/screw/on-thread.ts';
import { efficiency } from '../../../src/core/screw/torque.ts';
import { thread } from '../../../src/core/threads.ts';

const fittings = { threadFriction: 0.12, collarFriction: 0.005, collarDiameter: 0.045 };

describe('screwOnThread', () => {
  it('takes the pitch diameter as mean diameter and starts × pitch as lead', () => {
    const screw = screwOnThread(thread('1 1/4-5 Acme'), { ...fittings, starts: 2 });
    expect(screw.meanDiameter).toBeCloseTo(0.02921, 12);
    expect(screw.lead).toBeCloseTo(0.01016, 12);
    expect(screw).toMatchObject(fittings);
    expect(screw).not.toHaveProperty('starts');
  });
  it('gives the two-start Acme screw an efficiency of 0.45083: derived here', () =>
    expect(
      efficiency(screwOnThread(thread('1 1/4-5 Acme'), { ...fittings, starts: 2 })),
    ).toBeCloseTo(0.45083, 5));
  it('has one start unless told', () =>
    expect(screwOnThread(thread('M24'), fittings).lead).toBe(0.003));
  it.each([0, 1.5, 9, Number.NaN])('refuses %s starts', (starts) =>
    expect(() => screwOnThread(thread('M24'), { ...fittings, starts })).toThrow(
      /starts must be a whole number between 1 and 8/,
    ),
  );
});
