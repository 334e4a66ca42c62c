import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import { worksheetLoosening } from '../../../../src/core/worksheet/second/loosening.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { derivedOf } from '../fixtures/derived-of.ts';
import { millA, worksheetMills } from '../fixtures/mills.ts';

const opinionOf = (worksheet: Worksheet) =>
  worksheetLoosening(worksheet, worksheetChain(worksheet));

/** The wrench turns load and empty screw both ways. */
function turned(letter: string, mill: Worksheet): Worksheet {
  const drag = derivedOf(letter, 'drag torque (N m)');
  const tightening = derivedOf(letter, 'tighten torque above drag (N m)') + drag;
  const loosening = derivedOf(letter, 'loosen torque above drag (N m)') + drag;
  return { ...mill, second: { ...mill.second, tightening, loosening } };
}

describe('the stress by tightening and loosening', () => {
  it.each(Object.entries(worksheetMills))('of mill %s holds its target', (letter, mill) => {
    const { value, expandedUncertainty } = numbersOf(opinionOf(turned(letter, mill)));
    const target = 1e6 * derivedOf(letter, 'target sigma (MPa)');
    expect(Math.abs(value - target)).toBeLessThan(expandedUncertainty);
    expect(expandedUncertainty / target).toBeLessThan(0.25);
  });

  it('does not hang on friction, collar or no-load torque', () => {
    const own = numbersOf(opinionOf(turned('A', millA))).value;
    const unknown = { kind: 'unknown', low: undefined, high: undefined } as const;
    const tensioner = { ...millA.tensioner, friction: unknown, dragTorque: undefined };
    expect(numbersOf(opinionOf(turned('A', { ...millA, tensioner }))).value).toBe(own);
  });

  it('is as sure as the wrench that turned it', () => {
    const wrenchOf = (wrenchClass?: number) => {
      const mill = turned('A', { ...millA, tensioner: { ...millA.tensioner, wrenchClass } });
      const lines = numbersOf(opinionOf(mill)).contributions;
      return lines.find(({ name }) => name === 'wrench')?.contribution ?? 0;
    };
    expect(wrenchOf(0.1) / wrenchOf()).toBeCloseTo(2.5, 6);
  });

  it('refuses a loosening torque that is not less', () => {
    const second = { ...millA.second, tightening: 10, loosening: 10 };
    expect(refusalOf(opinionOf({ ...millA, second }))).toBe('looseningNotLess');
  });

  it('waits for both torques', () =>
    expect(opinionOf(millA)).toEqual({
      ready: false,
      waitsFor: ['second.tightening', 'second.loosening'],
    }));
});
