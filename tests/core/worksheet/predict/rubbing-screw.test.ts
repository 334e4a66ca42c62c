import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { WorksheetTensioner } from '../../../../src/core/worksheet/inputs.ts';
import { washerFriction } from '../../../../src/core/worksheet/own-assumptions.ts';
import { worksheetScrew } from '../../../../src/core/worksheet/predict/screw.ts';
import { numbersOf, refusalOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const screwOf = (changes: Partial<WorksheetTensioner>) =>
  worksheetScrew({ ...millA.tensioner, ...changes });
const friction = (low: number, high: number) =>
  ({ friction: { kind: 'friction', low, high } }) as const;

describe('rubbingScrew', () => {
  it('evaluates any values of its inputs: the middle ones give the middle efficiency', () => {
    const { inputs, efficiencyOf, efficiency } = numbersOf(screwOf({}));
    const middle = Object.fromEntries(
      Object.entries(inputs).map(([name, { value }]) => [name, value]),
    );
    expect(Object.keys(inputs)).toEqual(['threadFriction', 'meanDiameter', 'collarFriction']);
    expect(efficiencyOf(middle)).toBeCloseTo(efficiency, 12);
  });

  it('has no doubt about the friction of a collar that is not there', () => {
    const { inputs, efficiencyOf, efficiency } = numbersOf(screwOf({ collar: { kind: 'none' } }));
    expect(Object.keys(inputs)).toEqual(['threadFriction', 'meanDiameter']);
    expect(efficiencyOf({ threadFriction: 0.14, meanDiameter: 0.018 })).toBeCloseTo(efficiency, 12);
  });

  it('loses more with more friction', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.3, noNaN: true }), (low) => {
        const [slick, rough] = [screwOf(friction(low, low)), screwOf(friction(low, low + 0.05))];
        expect(numbersOf(rough).efficiency).toBeLessThan(numbersOf(slick).efficiency);
      }),
    ));

  it('is as likely on balls as on a washer where nobody knows: the middle is between them', () => {
    const unknown = numbersOf(screwOf({ collar: { kind: 'unknown' } }));
    const ring = { outerDiameter: undefined, innerDiameter: undefined };
    const onWasher = { kind: 'washer', frictionLow: undefined, frictionHigh: undefined } as const;
    const washer = numbersOf(screwOf({ collar: { ...onWasher, ...ring } }));
    const bearing = numbersOf(screwOf({ collar: { kind: 'bearing', ...ring } }));
    expect(unknown.inputs['collarKind']).toEqual({ value: 0.5, halfWidth: 0.5, shape: 'ends' });
    const at = (collarKind: number) => {
      const { efficiencyOf, inputs } = unknown;
      const values = Object.entries(inputs).map(([name, { value }]) => [name, value]);
      return efficiencyOf({ ...Object.fromEntries(values), collarKind });
    };
    expect(at(0)).toBeCloseTo(bearing.efficiency, 12);
    expect(at(1)).toBeCloseTo(washer.efficiency, 12);
    expect(at(0.5)).toBeCloseTo(unknown.efficiency, 12);
    expect(unknown.efficiencyLow).toBeCloseTo(washer.efficiencyLow, 12);
    expect(unknown.efficiencyHigh).toBeCloseTo(bearing.efficiencyHigh, 12);
  });

  it('lies between the same ends whether the washer’s friction is assumed or typed as just that', () => {
    const ring = { kind: 'washer', outerDiameter: undefined, innerDiameter: undefined } as const;
    const endsOf = (frictionLow?: number, frictionHigh?: number) => {
      const screw = numbersOf(screwOf({ collar: { ...ring, frictionLow, frictionHigh } }));
      return [screw.efficiencyLow, screw.efficiencyHigh];
    };
    const { low, high } = washerFriction;
    expect(endsOf(low, high)).toEqual(endsOf());
    expect(endsOf(0.1, 0.15)[0]).toBeGreaterThan(endsOf()[0] ?? Number.NaN);
    expect(endsOf(0.1, 0.15)[1]).toBeLessThan(endsOf()[1] ?? Number.NaN);
  });

  it('refuses friction that jams the screw', () => {
    expect(screwOf(friction(0.1, 20))).toEqual({
      ready: false,
      waitsFor: ['tensioner.friction.high'],
      refusal: { code: 'frictionJams', values: { high: 20 } },
    });
  });

  it('refuses friction that just jams a square thread, at one over the slope of its lead', () => {
    const thread = { kind: 'own', form: 'square', outsideDiameter: 0.02, pitch: 4e-3 } as const;
    const slope = Math.tan(numbersOf(screwOf({ thread })).operands?.leadAngle as number);
    expect(refusalOf(screwOf({ thread, ...friction(0.1, 1 / slope) }))).toBe('frictionJams');
    const just = numbersOf(screwOf({ thread, ...friction(0.1, 0.999 / slope) }));
    const meanDiameter = 0.99 * (just.operands?.meanDiameter ?? 0); // as a trial may draw it: steeper
    expect(just.efficiencyOf({ threadFriction: 0.999 / slope, meanDiameter })).toBe(0);
    expect(just.efficiencyOf({ threadFriction: 0.98 / slope, meanDiameter })).toBeGreaterThan(0);
  });
});
