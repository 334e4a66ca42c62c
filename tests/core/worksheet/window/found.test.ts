import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { demandingMill as mill } from '../fixtures/demanding-mill.ts';
import { derivedOf } from '../fixtures/derived-of.ts';

const windowOf = (worksheet: Worksheet) => evaluateWorksheet(worksheet).window;
const withTarget = (target: Partial<Worksheet['target']>): Worksheet => ({
  ...mill,
  target: { ...mill.target, ...target },
});
const withDemands = (demands: Partial<Worksheet['demands']>): Worksheet => ({
  ...mill,
  demands: { ...mill.demands, ...demands },
});

describe('the window of a worksheet', () => {
  it('binds at straight cuts below and at the life kept above, with today’s stress inside', () => {
    const found = numbersOf(windowOf(mill));
    expect([found.low?.cause, found.high?.cause]).toEqual(['straightness', 'life']);
    expect(found.isOpen).toBe(true);
    expect(found.lows.map(({ cause }) => cause)).toEqual(['straightness', 'grip']);
    expect(found.highs.map(({ cause }) => cause)).toEqual(['yield', 'life']);
    const { stress } = numbersOf(evaluateWorksheet(mill).atUse);
    expect(found.today).toMatchObject({ route: 'measured', stress });
    expect(found.waitsFor).toEqual([]);
  });

  it('binds at the makers’ limits wherever they are lower: they always win', () => {
    const byBand = numbersOf(windowOf(withTarget({ makerLimitStress: 90e6 })));
    expect(byBand.high).toEqual({ cause: 'bandMaker', stress: 90e6 });
    const limit = derivedOf('A', 'Fw wheel (N)');
    const byMill = numbersOf(windowOf(withTarget({ makerLimitWheelForce: limit })));
    expect(byMill.high?.cause).toBe('millMaker');
    expect(byMill.high?.stress).toBeCloseTo(110e6, -2);
  });

  it('is not drawn while a maker’s limit cannot be read: nobody knows then where it ends', () =>
    expect(refusalOf(windowOf(withTarget({ makerLimitStress: -5 })))).toBe('outOfRange'));

  it('shuts where the guides are too far apart for what the maker allows', () => {
    const apart = {
      ...withDemands({ guideSpan: 1.3 }),
      target: withTarget({ makerLimitStress: 60e6 }).target,
    };
    expect(numbersOf(windowOf(apart)).isOpen).toBe(false);
  });

  it('tells the edges that it can, and what the others wait for', () => {
    const found = numbersOf(windowOf(withDemands({ guideSpan: undefined, speed: undefined })));
    expect(found.low).toBeUndefined();
    expect(found.waitsFor).toEqual(['demands.guideSpan', 'demands.speed']);
  });

  it('takes no setting that is too slack as the measure of life', () => {
    const slack = numbersOf(windowOf({ ...mill, use: { torque: 4 } }));
    expect(slack.today?.stress).toBeLessThan(Number(slack.low?.stress));
    expect(slack.highs.map(({ cause }) => cause)).toEqual(['yield']);
  });

  it('throws nothing, whatever is demanded', () =>
    fc.assert(
      fc.property(
        fc.record({
          guideSpan: fc.double(),
          speed: fc.double(),
          power: fc.double(),
          rimFriction: fc.double({ min: 0, max: 1e13 }),
          push: fc.double({ min: 1e-9, max: 1e13 }),
          movement: fc.double({ min: 1e-9, max: 1e13 }),
          lifeKept: fc.double({ min: 1e-9, max: 1e13 }),
          lifeExponent: fc.double({ min: 1e-9, max: 1e13 }),
          warming: fc.double(),
        }),
        fc.double({ min: 1e-9, max: 1e13 }),
        fc.double({ min: 1e-9, max: 1e13 }),
        (demands, thickness, bodyWidth) => {
          const band = { ...mill.band, thickness, bodyWidth, widthOverTeeth: 1.2 * bodyWidth };
          expect(evaluateWorksheet({ ...mill, band, demands }).window).toHaveProperty('ready');
        },
      ),
      { seed: 1, numRuns: 500 },
    ));
});
