import { describe, expect, it } from 'vitest';
import { listedThreads, threadDesignations } from '../../../src/core/threads/list.ts';

describe('listedThreads', () => {
  it('holds a coarse metric thread under its diameter alone', () =>
    expect(listedThreads.find(({ designation }) => designation === 'M20')).toEqual({
      designation: 'M20',
      family: 'metric',
      majorDiameter: 0.02,
      pitch: 0.0025,
    }));
  it('turns inches and threads per inch into metres: 3/4-10 UNC is 19.05 by 2.54 mm', () => {
    const found = listedThreads.find(({ designation }) => designation === '3/4-10 UNC');
    expect(found?.majorDiameter).toBeCloseTo(0.01905, 15);
    expect(found?.pitch).toBeCloseTo(0.00254, 15);
  });
  it('has only threads that a screw can have', () => {
    for (const { majorDiameter, pitch } of listedThreads) {
      expect(pitch).toBeGreaterThan(0.0005);
      expect(pitch).toBeLessThan(majorDiameter / 2);
    }
  });
});

describe('threadDesignations', () => {
  it('names every family', () =>
    expect(threadDesignations).toEqual(
      expect.arrayContaining([
        'M20',
        'M20x1.5',
        '3/4-10 UNC',
        '3/4-16 UNF',
        '1 1/8-7 UNC',
        '3/4-6 Acme',
        '1-5 Acme',
        'Tr20x4',
      ]),
    ));
  it('names nothing twice, nor a coarse thread by its pitch', () => {
    expect(new Set(threadDesignations).size).toBe(threadDesignations.length);
    expect(threadDesignations).not.toContain('M20x2.5');
  });
});
