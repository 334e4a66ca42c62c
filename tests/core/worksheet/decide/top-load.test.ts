import { describe, expect, it } from 'vitest';
import { workingStress } from '../../../../src/core/assumptions.ts';
import { beyondPractice, topLoadTroubles } from '../../../../src/core/worksheet/decide/top-load.ts';
import { stressAtTorque } from '../../../../src/core/worksheet/decide/ways.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet, worksheetChain } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const limited = (target: Partial<Worksheet['target']>): Worksheet => ({
  ...millA,
  readings: [],
  target: {
    ...millA.target,
    makerLimitStress: undefined,
    makerLimitWheelForce: undefined,
    ...target,
  },
});
const unmeasured = { ready: false, waitsFor: ['readings'] } as const;
const troubles = (worksheet: Worksheet, load: number) =>
  topLoadTroubles(worksheet, worksheetChain(worksheet), unmeasured, load);
const trouble = (worksheet: Worksheet, load: number) => troubles(worksheet, load)[0];
const predictedAt = (worksheet: Worksheet, torque: number) =>
  numbersOf(evaluateWorksheet({ ...worksheet, use: { ...worksheet.use, torque } }).predicted);

describe('topLoadTroubles', () => {
  it('has nothing to say within the limits, nor of a load that only turns the screw', () => {
    const far = limited({ makerLimitStress: 300e6, makerLimitWheelForce: 20e3 });
    expect(trouble(far, 14)).toBeUndefined();
    expect(trouble(limited({ makerLimitStress: 1e3 }), 0.1)).toBeUndefined();
  });

  it('names the limit, above it and where only the uncertainty reaches it', () => {
    const mill = limited({ makerLimitStress: 100e6 });
    expect(trouble(mill, 20)?.guard.code).toBe('aboveBandLimit');
    const { stress } = predictedAt(mill, 13);
    const near = limited({ makerLimitStress: 1.05 * stress });
    expect(trouble(near, 13)?.guard.code).toBe('mayExceedBandLimit');
    expect(trouble(limited({ makerLimitWheelForce: 3000 }), 20)?.guard.code).toBe('aboveMillLimit');
  });

  it.each([80e6, 100e6, 130e6])('finds the load whose interval ends at %s Pa', (limit) => {
    const mill = limited({ makerLimitStress: limit });
    const highest = trouble(mill, 40)?.highest ?? 0;
    const { stress, expandedUncertainty } = predictedAt(mill, highest);
    expect((stress + expandedUncertainty) / limit).toBeCloseTo(1, 3);
    expect(trouble(mill, highest)).toBeUndefined();
    expect(trouble(mill, 1.01 * highest)).toBeDefined();
  });

  it('finds none where no load that pulls stays below', () =>
    expect(trouble(limited({ makerLimitStress: 1 }), 14)).toEqual({
      guard: expect.objectContaining({ code: 'aboveBandLimit' }),
      highest: undefined,
    }));

  it('cannot tell while the screw is not known', () => {
    const mill = limited({ makerLimitStress: 1e6 });
    const blind = { ...mill, band: { ...mill.band, bodyWidth: undefined } };
    expect(trouble(blind, 14)).toBeUndefined();
  });

  it('warns of more than is in use, uncertainty included, and finds where that ends', () => {
    const mill = limited({});
    const [first, ...others] = troubles(mill, 20);
    expect(others).toEqual([]);
    expect(first?.guard).toMatchObject({ code: 'outsideCommonPractice', level: 'warn' });
    const { stress, expandedUncertainty } = predictedAt(mill, first?.highest ?? 0);
    expect((stress + expandedUncertainty) / workingStress.high).toBeCloseTo(1, 3);
    expect(stress).toBeLessThan(workingStress.high);
  });

  it('tells a maker’s limit, the steel and common practice in this order, each once', () => {
    const mill = limited({
      makerLimitStress: 250e6,
      makerLimitWheelForce: 12e3,
      yieldStrength: 740e6,
    });
    const found = troubles(mill, 60);
    expect(found.map(({ guard }) => guard.code)).toEqual([
      'aboveBandLimit',
      'aboveMillLimit',
      'beyondYieldShare',
      'outsideCommonPractice',
    ]);
    const highest = found.map((each) => each.highest ?? 0);
    expect(highest).toEqual([...highest].sort((a, b) => b - a));
  });

  it('goes by the readings where there are some', () => {
    const mill = limited({});
    const { measured } = evaluateWorksheet(millA);
    const [found] = topLoadTroubles(mill, worksheetChain(mill), measured, 30);
    const { stress, expandedUncertainty } = numbersOf(
      stressAtTorque(['use.torque', found?.highest], measured),
    );
    expect((stress + expandedUncertainty) / workingStress.high).toBeCloseTo(1, 3);
  });

  it('leaves out what nobody passes who keeps to what is told before', () => {
    const mill = limited({ makerLimitStress: 100e6 });
    const codes = troubles(mill, 40).map(({ guard }) => guard.code);
    expect(codes).toEqual(['aboveBandLimit']);
  });
});

describe('beyondPractice', () => {
  it.each([
    [workingStress.high, 0, false],
    [workingStress.high - 1e6, 2e6, true],
    [workingStress.high + 1e6, 0, true],
  ])('of %s ± %s Pa: %s', (stress, expandedUncertainty, isBeyond) =>
    expect(beyondPractice({ stress, expandedUncertainty }) !== undefined).toBe(isBeyond),
  );
});
