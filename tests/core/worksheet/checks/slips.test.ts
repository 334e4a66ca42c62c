import { describe, expect, it } from 'vitest';
import { type SlipName, slipsOf } from '../../../../src/core/worksheet/checks/slips.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { millD } from '../fixtures/hydraulic-mill.ts';
import { millA } from '../fixtures/mills.ts';

const band = { advantage: 1, strandCount: 2 } as const;
const withCylinder = (
  pistonDiameter: number | undefined,
  rodDiameter: number | undefined,
): Worksheet => {
  const cylinder = { ...millD.tensioner.cylinder, pistonDiameter, rodDiameter };
  return { ...millD, tensioner: { ...millD.tensioner, cylinder } };
};
const ratiosOf = (
  name: SlipName,
  worksheet: Worksheet,
  chain: Parameters<typeof slipsOf>[1] = band,
) =>
  slipsOf(worksheet, chain)
    .filter((slip) => slip.name === name)
    .map(({ low, high }) => [low, high]);

describe('slipsOf', () => {
  it('doubles the prediction where a strip was taken for a band, and halves it the other way', () => {
    expect(ratiosOf('strands', millA)).toEqual([[2, 2]]);
    expect(ratiosOf('strands', millA, { ...band, strandCount: 1 })).toEqual([[0.5, 0.5]]);
  });

  it('knows what units differ by, each way', () => {
    expect(ratiosOf('lengthUnit', millA).flat()).toContain(25.4);
    expect(ratiosOf('lengthUnit', millA).flat()).toContain(1 / 25.4);
    expect(ratiosOf('torqueUnit', millA)[0]?.[0]).toBeCloseTo(1.35582, 5); // N·m in a ft·lbf
    expect(ratiosOf('pressureUnit', millD).flat()).toContain(14.5038); // psi in a bar
    expect(ratiosOf('graduation', millA).flat()).toContain(2.54);
    expect(ratiosOf('decimalPoint', millA).flat()).toEqual([10, 10, 0.1, 0.1]);
  });

  it('keeps what is of the screw from a cylinder, and the other way round', () => {
    const names = (worksheet: Worksheet) => slipsOf(worksheet, band).map(({ name }) => name);
    expect(names(millA)).not.toContain('pressureUnit');
    expect(names(millA)).not.toContain('rodSide');
    expect(names(millD)).not.toContain('torqueUnit');
    expect(names(millD)).toEqual(expect.arrayContaining(['twoCylinders', 'rodSide', 'radius']));
  });

  it('makes D² ÷ (D² − d²) of a rod that was counted though the oil is on the other side', () => {
    const [[low = 0, high = 0] = []] = ratiosOf('noRodSide', withCylinder(0.05, 0.03));
    expect(low).toBeCloseTo(0.05 ** 2 / (0.05 ** 2 - 0.03 ** 2), 12);
    expect(high).toBe(low);
    expect(ratiosOf('rodSide', withCylinder(0.05, 0.03))).toEqual([]);
  });

  it('makes a range of a rod that was left out, for nobody knows how thick it is', () => {
    const [[low = 0, high = 0] = []] = ratiosOf('rodSide', withCylinder(0.05, undefined));
    expect([low, high]).toEqual([expect.closeTo(0.51, 12), expect.closeTo(0.84, 12)]);
    expect(ratiosOf('noRodSide', withCylinder(0.05, undefined))).toEqual([]);
    expect(ratiosOf('noRodSide', withCylinder(undefined, 0.03))).toEqual([]);
  });

  it('asks after a lever only where one was typed', () => {
    expect(ratiosOf('noLever', millA)).toEqual([]);
    expect(ratiosOf('noLever', millA, { ...band, advantage: 4 })).toEqual([[0.25, 0.25]]);
    expect(ratiosOf('leverRound', millA, { ...band, advantage: 4 })).toEqual([[1 / 16, 1 / 16]]);
  });
});
