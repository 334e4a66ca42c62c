/** What the lesson claims of span and wheel, against the derived figures of the invented mill A and against the core. */
import { describe, expect, it } from 'vitest';
import { toothTipCompliance } from '../../../src/core/span.ts';
import { whatTensionBuys as model } from '../../../src/lessons/what-tension-buys/model.ts';
import { pushedSpan, STRIP } from '../../../src/lessons/what-tension-buys/push/pushed-span.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';
import { bandArea, OTTERSLEIGH } from '../../../src/models/mills/ottersleigh.ts';
import { numberAt } from '../../published/cases.ts';
import { derivedMills } from '../../published/derived-cases.ts';

const at = (inputs: Partial<InputsOf<typeof model>>) =>
  evaluated(model, inputsAt(model, inputs, 'metric'));
const PUSH = 30; // N, as in the derived cases

/** Tensions and spacings from end to end of their sliders. */
const everywhere = [60e6, 85e6, 110e6, 160e6].flatMap((stress) =>
  [0.25, 0.4, 0.55, 0.9].map((span) => ({ stress, span })),
);

describe('the pushed span', () => {
  it('starts on mill A as it is derived', () => {
    const { inputs } = derivedMills['A'] ?? {};
    const { stress, span, power, friction, push } = at({});
    expect({ stress, span, power, friction }).toEqual({
      stress: numberAt(inputs, 'target'),
      span: numberAt(inputs, 'guide'),
      power: numberAt(inputs, 'Pw'),
      friction: numberAt(inputs, 'muw'),
    });
    expect(push).toBe(PUSH);
  });

  it('twists as the derived stiffness of 7.06115 N·m/rad has it', () =>
    expect(at({}).twist * 1e3).toBeCloseTo(((PUSH * 0.0205 ** 2) / 7.06115) * 1e3, 5));

  it('moves its teeth a little more than derived between clamps, for its guides are rollers', () => {
    const { teeth } = at({});
    const strip = { ...STRIP, span: 0.55, tension: 110e6 * bandArea };
    const moved = (ends: 'clamped' | 'pinned') =>
      PUSH * toothTipCompliance({ ...strip, ends }).total;
    expect(moved('clamped') * 1e3).toBeCloseTo(2.96138, 5); // derived
    expect(teeth).toBeGreaterThan(moved('clamped'));
    expect(teeth).toBeLessThan(moved('pinned'));
  });

  // Timoshenko, Strength of Materials II, ch. II (tie rods), and Roark, table 8.9: the bending part of a long pulled beam fades.
  it('comes to the pinned string, F·s/4T, as the guides move apart, and its stiffness to nothing', () => {
    const shares = [0.25, 0.55, 0.9, 10, 1000].map((span) => {
      const string = (PUSH * span) / (4 * 110e6 * bandArea);
      return pushedSpan(110e6, span).bow / string;
    });
    expect(shares.toSorted((a, b) => a - b)).toEqual(shares);
    expect(shares.at(-1)).toBeCloseTo(1, 4);
    expect(PUSH / pushedSpan(110e6, 1e6).teeth).toBeLessThan(0.01); // N/m
  });

  it('is held by less and less as the guides move apart, at any tension: by a twentieth at the slider’s end', () => {
    const { min, max } = model.inputs.far;
    for (const stress of [60e6, 110e6, 160e6]) {
      const holds = [min, 0.55, 1.35, 4, max].map((far) => at({ stress, far }).farHold);
      expect(holds.toSorted((a, b) => b - a)).toEqual(holds);
      expect(holds.at(-1)).toBeLessThan((holds[0] ?? 0) / 20);
      // the string and the twisted strip: in proportion to 1/spacing, so nothing at infinity
      const twice = at({ stress, far: max / 2 }).farHold;
      expect((holds.at(-1) ?? 0) / twice).toBeCloseTo(0.5, 2);
    }
  });

  it('bows nearly half as far at twice the tension, and twists hardly less', () => {
    for (const { stress, span } of everywhere) {
      const [once, twice] = [pushedSpan(stress / 2, span), pushedSpan(stress, span)];
      expect(once.bow / twice.bow).toBeGreaterThan(1.75);
      expect(once.bow / twice.bow).toBeLessThan(2);
      expect(once.twist / twice.twist).toBeLessThan(1.2);
    }
  });

  it('gains more from guides half as far apart than from twice the tension, everywhere', () => {
    for (const inputs of everywhere) {
      const { doubledSaves, closerSaves } = at(inputs);
      expect(closerSaves).toBeGreaterThanOrEqual(0.5);
      expect(doubledSaves).toBeLessThan(0.4);
    }
  });

  it('is held against twist mostly by its steel', () => {
    for (const inputs of everywhere) expect(at(inputs).steelShare).toBeGreaterThan(0.6);
    // G·J = 79 GPa × 29 mm × 1 mm³/3 × (1 − 0.63/29), T·r² = 3190 N × (29² + 1)/12 mm², by hand
    expect(at({}).steelShare).toBeCloseTo(0.74708 / (0.74708 + 0.22383), 4);
  });

  it('moves most with no guides at all, wheel to wheel', () => {
    const { strandTeeth, strand } = at({});
    expect(strand).toBe(OTTERSLEIGH.centreDistance);
    expect(strandTeeth).toBeGreaterThan(at({ span: 0.9 }).teeth);
  });
});

describe('the drive wheel', () => {
  it('is that of mill A as derived', () => {
    const { margin, slipPower, tight, slack } = at({});
    expect(margin).toBeCloseTo(1.94341, 5);
    expect(slipPower / 1e3).toBeCloseTo(55.6787, 4);
    expect(tight).toBeCloseTo(3436.34, 2);
    expect(slack).toBeCloseTo(3061.34, 2);
  });

  it('has Euler and Eytelwein’s ratio for its margin with no power', () => {
    for (const friction of [0.1, 0.25, 0.4]) {
      const { margin, idleMargin, difference } = at({ power: 0, friction });
      expect(margin).toBeCloseTo(Math.exp(friction * Math.PI), 12);
      expect(idleMargin).toBe(margin);
      expect(difference).toBe(0);
    }
  });

  it('has a margin of 1 at the power at which it slips', () => {
    const { slipPower } = at({ stress: 60e6, friction: 0.1 });
    expect(at({ stress: 60e6, friction: 0.1, power: slipPower }).margin).toBeCloseTo(1, 12);
  });

  it('carries the cut at Ottersleigh even at a quarter of its tension', () => {
    const { power, quarterSlipPower, halfSlipPower, slipPower } = at({});
    expect(quarterSlipPower).toBeGreaterThan(power);
    expect(halfSlipPower).toBeLessThan(slipPower);
  });
});
