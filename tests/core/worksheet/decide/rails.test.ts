import { describe, expect, it } from 'vitest';
import { withinRails, worksheetRails } from '../../../../src/core/worksheet/decide/rails.ts';
import type { Worksheet, WorksheetTarget } from '../../../../src/core/worksheet/inputs.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { millA, millC } from '../fixtures/mills.ts';

const setting = { stress: 110e6, expandedUncertainty: 10e6, input: 'target.stress' } as const;
const railsOf = (worksheet: Worksheet, stress = 110e6) =>
  worksheetRails(worksheet, { ...setting, stress }, worksheetChain(worksheet));
const limited = (limits: Partial<WorksheetTarget>): Worksheet => ({
  ...millA,
  target: { ...millA.target, ...limits },
});
const codes = (worksheet: Worksheet, stress?: number) =>
  numbersOf(railsOf(worksheet, stress)).found.map(({ code }) => code);

describe('worksheetRails', () => {
  it('has nothing to say of mill A at its target', () => expect(codes(millA)).toEqual([]));

  it('stops at the makers’ limits, the force with both strands counted', () => {
    const limits = { makerLimitStress: 100e6, makerLimitWheelForce: 6379 };
    const { found } = numbersOf(railsOf(limited(limits)));
    expect(found.map(({ code, level }) => [code, level])).toEqual([
      ['aboveBandLimit', 'stop'],
      ['aboveMillLimit', 'stop'],
    ]);
    expect(found[1]?.inputs).toEqual(['target.stress', 'target.makerLimitWheelForce']);
    const close = numbersOf(
      railsOf(limited({ makerLimitStress: 110e6, makerLimitWheelForce: 6381 })),
    ).found;
    expect(close.map(({ code, level, inputs }) => [code, level, inputs[1]])).toEqual([
      ['mayExceedBandLimit', 'warn', 'target.makerLimitStress'],
      ['mayExceedMillLimit', 'warn', 'target.makerLimitWheelForce'],
    ]);
    expect(codes(limited({ makerLimitStress: 140e6, makerLimitWheelForce: 8000 }))).toEqual([]);
  });

  it('looks at the yield of the steel, with the bending round the wheel', () => {
    for (const [yieldStrength, code] of [
      [800e6, 'nearYield'],
      [600e6, 'beyondYieldShare'],
    ] as const) {
      const inputs = ['target.stress', 'target.yieldStrength'];
      expect(numbersOf(railsOf(limited({ yieldStrength }))).found).toMatchObject([
        { code, inputs },
      ]);
    }
  });

  it('stops a band that is too thick for its wheel', () => {
    const thick = { ...millA, band: { ...millA.band, thickness: 2.1e-3 } };
    expect(numbersOf(railsOf(thick)).found[0]).toEqual({
      code: 'tooThickForWheel',
      level: 'stop',
      values: { thickness: 2.1e-3, wheelDiameter: 0.52 },
      inputs: ['band.thickness', 'mill.wheelDiameter1'],
    });
    const small = { ...millA, mill: { ...millA.mill, wheelDiameter2: 0.2 } };
    expect(numbersOf(railsOf(small)).found[0]).toMatchObject({
      values: { thickness: 1e-3, wheelDiameter: 0.2 },
      inputs: ['band.thickness', 'mill.wheelDiameter2'],
    });
  });

  it('lets a wheel of just 250 thicknesses pass, and judges none that is not known', () => {
    const band = { ...millA.band, thickness: 2e-3 };
    const wheel = (wheelDiameter1: number | undefined) =>
      codes({ ...millA, band, mill: { ...millA.mill, wheelDiameter1 } });
    expect(wheel(0.5)).not.toContain('tooThickForWheel');
    expect(wheel(0.499)).toContain('tooThickForWheel');
    expect(wheel(undefined)).toEqual(['bendingNotJudged']);
  });

  it('warns of a thread that may back off, at the low end of its friction', () => {
    const friction = { kind: 'friction', low: 0.08, high: 0.18 } as const;
    const slick = { ...millA, tensioner: { ...millA.tensioner, friction } };
    expect(numbersOf(railsOf(slick)).found).toMatchObject([
      { code: 'mayBackOff', level: 'warn', inputs: ['target.stress', 'tensioner.friction.low'] },
    ]);
  });

  it('notes what is outside common practice, which hangs on the stress alone', () =>
    expect(numbersOf(railsOf(millC, 30e6)).found).toContainEqual({
      code: 'outsideCommonPractice',
      level: 'note',
      values: { stress: 30e6, low: 50e6, high: 200e6 },
      inputs: ['target.stress'],
    }));

  it('judges by what is known, and waits for a limit that cannot be one', () => {
    const { mill, ...rest } = millA;
    const noWheel = { ...rest, mill: { ...mill, wheelDiameter1: undefined } };
    expect(numbersOf(railsOf(noWheel)).found).toEqual([
      { code: 'bendingNotJudged', level: 'note', values: {}, inputs: ['mill.wheelDiameter1'] },
    ]);
    const bare = { ...noWheel, band: { ...millA.band, thickness: undefined } };
    expect(numbersOf(railsOf(bare)).found).toEqual([]); // it is not the wheel alone that is missing
    const target = { ...millA.target, makerLimitWheelForce: 6000 };
    expect(railsOf({ ...bare, target })).toEqual({ ready: false, waitsFor: ['band.thickness'] });
    expect(railsOf(limited({ makerLimitStress: -1 }))).toMatchObject({
      waitsFor: ['target.makerLimitStress'],
    });
  });
});

describe('withinRails', () => {
  const value = ready({ torque: 12 });

  it('lets a setting pass that no rail stops', () =>
    expect(withinRails(value, railsOf(limited({ yieldStrength: 800e6 })))).toEqual(value));

  it('refuses it with the code of the first that stops', () =>
    expect(refusalOf(withinRails(value, railsOf(limited({ makerLimitStress: 100e6 }))))).toBe(
      'aboveBandLimit',
    ));

  it('waits where setting or rails wait', () => {
    const waiting = { ready: false, waitsFor: ['target.stress'] } as const;
    expect(withinRails(waiting, railsOf(millA))).toEqual(waiting);
    expect(withinRails(value, waiting)).toEqual(waiting);
  });
});
