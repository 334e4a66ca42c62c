import { describe, expect, it } from 'vitest';
import { handledMill, minutesOf } from '../../../src/core/bench/handling.ts';
import { benchMill } from '../../../src/core/bench/mill.ts';

const mill = () => {
  const { hidden, ...rest } = benchMill(3);
  return { ...rest, hidden: { ...hidden, slipChance: 0.2, barWarming: 2 } };
};

describe('handledMill', () => {
  it('is the mill as it is in bare hands and in a hurry', () =>
    expect(handledMill(mill(), { clamps: 'quick', hands: 'bare' })).toEqual(mill()));
  it('slips twenty times more seldom where clamps are set with care, and changes nothing else', () => {
    const { hidden } = handledMill(mill(), { clamps: 'careful', hands: 'bare' });
    expect(hidden.slipChance).toBeCloseTo(0.01, 12);
    expect(hidden).toEqual({ ...mill().hidden, slipChance: hidden.slipChance });
  });
  it('warms a tenth in gloves, and changes nothing else', () => {
    const { hidden } = handledMill(mill(), { clamps: 'quick', hands: 'gloved' });
    expect(hidden.barWarming).toBeCloseTo(0.2, 12);
    expect(hidden).toEqual({ ...mill().hidden, barWarming: hidden.barWarming });
  });
});

describe('minutesOf', () => {
  it.each([
    ['quick', 'bare', 0, 1],
    ['quick', 'bare', 9, 10],
    ['careful', 'bare', 9, 15],
    ['quick', 'gloved', 10, 16],
    ['careful', 'gloved', 10, 21],
  ] as const)('of %s clamps and %s hands with %s readings is %s', (clamps, hands, readings, is) =>
    expect(minutesOf({ clamps, hands }, readings)).toBe(is),
  );
});
