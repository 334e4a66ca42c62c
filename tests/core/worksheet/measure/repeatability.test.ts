import { describe, expect, it } from 'vitest';
import { worksheetRepeatability } from '../../../../src/core/worksheet/measure/repeatability.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millA } from '../fixtures/mills.ts';

const { rig } = millA; // read to 5 µm
const none: readonly number[] = [];
const repeatability = (changes: Partial<typeof rig>, torques = none, elongations = none) =>
  numbersOf(
    worksheetRepeatability(
      { ...rig, ...changes },
      { torques, elongations, series: torques.map(() => 1) },
    ),
  );
const nothing = { torques: none, elongations: none, series: none };

describe('worksheetRepeatability', () => {
  it('is 5 µm by default, and never below the step read to', () => {
    expect(repeatability({ readTo: 1e-6 }).repeatability).toBe(5e-6);
    expect(repeatability({ readTo: 6.35e-6 })).toEqual({
      ready: true,
      repeatability: 6.35e-6,
      repeatabilityFrom: 'default',
    });
  });

  it('is as typed, but never below q/√12', () => {
    expect(repeatability({ repeatability: 3e-6 })).toMatchObject({
      repeatability: 3e-6,
      repeatabilityFrom: 'measured',
    });
    expect(repeatability({ repeatability: 1e-9 }).repeatability).toBeCloseTo(
      5e-6 / Math.sqrt(12),
      15,
    );
  });

  it('waits where what is typed cannot be one, rather than taking the default', () =>
    expect(worksheetRepeatability({ ...rig, repeatability: Number.NaN }, nothing)).toMatchObject({
      waitsFor: ['rig.repeatability'],
    }));

  const torques = [5, 5, 5, 9, 9, 9];
  it('matches the hand-worked pool: deviations 1, 0, −1 and 2, 0, −2 µm over 4 spare readings', () => {
    const elongations = [11e-6, 10e-6, 9e-6, 32e-6, 30e-6, 28e-6];
    const found = repeatability({ readTo: 1e-6 }, torques, elongations);
    expect(found.repeatability).toBeCloseTo(Math.sqrt(10 / 4) * 1e-6, 15);
    expect(found.repeatabilityFrom).toBe('repeats');
  });

  it('pools each torque by itself, in whatever order the rows stand: by hand, 12 µm² over 4', () => {
    const mixed = [5, 12, 9, 5, 12, 9, 5];
    // 1, 0, −1; 1, −1; 2, −2 µm from their means, at 5, 9 and 12 N·m
    const elongations = [11e-6, 42e-6, 31e-6, 10e-6, 38e-6, 29e-6, 9e-6];
    const found = repeatability({ readTo: 1e-6 }, mixed, elongations);
    expect(found.repeatability).toBeCloseTo(Math.sqrt(12 / 4) * 1e-6, 15);
  });

  it('does not believe repeats that all agree below q/√12, nor fewer than four spare ones', () => {
    const alike = [1e-5, 1e-5, 1e-5, 3e-5, 3e-5, 3e-5];
    expect(repeatability({}, torques, alike).repeatability).toBeCloseTo(5e-6 / Math.sqrt(12), 15);
    const fewer = repeatability({}, torques.slice(0, 5), alike.slice(0, 5));
    expect(fewer.repeatabilityFrom).toBe('default');
  });

  it('takes the graduation for the step where none is given, and waits where neither is', () => {
    expect(repeatability({ readTo: undefined }).repeatability).toBe(10e-6);
    const open = { ...rig, readTo: undefined, graduation: undefined };
    expect(worksheetRepeatability(open, nothing)).toEqual({
      ready: false,
      waitsFor: ['rig.readTo'],
    });
  });
});
