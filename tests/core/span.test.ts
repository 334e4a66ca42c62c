import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lateralStiffness } from '../../src/core/span/beam-under-tension.ts';
import { pressForce } from '../../src/core/span/press.ts';
import {
  deflectionUnderPress,
  lowestNote,
  pitchFromStress,
  stressFromPitch,
  tensionFromPress,
} from '../../src/core/span.ts';

const steel = { density: 7850, thickness: 0.001, youngsModulus: 205e9 };
const strip = { ...steel, span: 1.35, ends: 'wheels' } as const;
const pressed = { span: 1.35, bendingStiffness: 0.4954, ends: 'wheels' } as const;
const stretching = { ...pressed, axialStiffness: 5.945e6, effectiveLength: 4.337 };
const allEnds = fc.constantFrom('wheels', 'guides', 'pinned', 'clamped');

describe('stressFromPitch and pitchFromStress', () => {
  // OpenStax, University Physics 1, 16.3: wave speed √(T/μ), so f = √(σ/ρ)/2s; a vanishing
  // thickness leaves the string. 78.5 MPa on steel run at 100 m/s: 50 Hz on a metre.
  it('are the string where the strip is thin', () => {
    const string = { ...strip, thickness: 1e-9, span: 1 };
    expect(pitchFromStress({ ...string, stress: 78.5e6 })).toBeCloseTo(50, 10);
    expect(stressFromPitch({ ...string, frequency: 50 })).toBeCloseTo(78.5e6, 2);
  });

  it('read more stress from the same note where teeth add a tenth of mass', () => {
    const string = { ...strip, thickness: 1e-9, frequency: 42 };
    const plain = stressFromPitch(string);
    expect(stressFromPitch({ ...string, massRatio: 1.1 }) / plain).toBeCloseTo(1.1, 10);
    expect(stressFromPitch({ ...string, harmonic: 2 }) / plain).toBeCloseTo(0.25, 10);
  });

  it('read less stress from the same note where the ends hold the strip', () => {
    const short = { ...strip, span: 0.55, frequency: 105 };
    const clamped = stressFromPitch({ ...short, ends: 'clamped' });
    const guides = stressFromPitch({ ...short, ends: 'guides' });
    expect(clamped).toBeLessThan(guides);
    expect(guides).toBeLessThan(stressFromPitch(short));
  });

  it('undo one another', () => {
    const stresses = fc.double({ min: 40e6, max: 300e6, noNaN: true });
    const ratios = fc.double({ min: 1, max: 1.15, noNaN: true });
    fc.assert(
      fc.property(stresses, ratios, allEnds, (stress, massRatio, ends) => {
        const toothed = { ...strip, massRatio, ends };
        const frequency = pitchFromStress({ ...toothed, stress });
        expect(stressFromPitch({ ...toothed, frequency }) / stress).toBeCloseTo(1, 10);
      }),
    );
  });

  it('reach down to the lowest note, by hand where the tension is five times what bending resists with', () => {
    const short = { ...strip, span: 0.3, ends: 'pinned' } as const;
    const lowest = lowestNote(short);
    const stress = 5 * ((Math.PI * 0.001) / 0.3) ** 2 * (205e9 / 12);
    expect(lowest).toBeCloseTo((Math.sqrt(stress / 7850) / 0.6) * 1.1, 10);
    expect(stressFromPitch({ ...short, frequency: lowest })).toBeCloseTo(stress, 0);
    const below = { ...short, frequency: lowest * 0.999 };
    expect(() => stressFromPitch(below)).toThrow('frequency must be at least');
    expect(() => lowestNote({ ...short, span: 0 })).toThrow('span must be above 0 m');
  });

  it.each(['density', 'thickness', 'youngsModulus', 'massRatio', 'span'])(
    'refuse %s of 0',
    (name) =>
      expect(() => stressFromPitch({ ...strip, frequency: 42, [name]: 0 })).toThrow(
        `${name} must be above 0`,
      ),
  );

  it('refuse no stress, and notes that no strand of a mill has', () => {
    expect(() => pitchFromStress({ ...strip, stress: 0 })).toThrow('stress must be above 0 Pa');
    expect(() => stressFromPitch({ ...strip, frequency: 5 })).toThrow('between 10 and 1000 Hz');
  });
});

describe('deflectionUnderPress', () => {
  it('is force over stiffness while the tension is taken as constant', () => {
    const stiffness = lateralStiffness({ ...pressed, tension: 3190 }, 'wheels');
    const deflection = deflectionUnderPress({ ...pressed, force: 48, tension: 3190 });
    expect(deflection).toBeCloseTo(48 / stiffness, 15);
    expect(deflectionUnderPress({ ...pressed, force: 0, tension: 3190 })).toBe(0);
  });

  it('is less by about a hundredth where the press stretches the band', () => {
    const press = { force: 49, tension: 3190 };
    const plain = deflectionUnderPress({ ...pressed, ...press });
    const stretched = deflectionUnderPress({ ...stretching, ...press });
    expect(stretched / plain).toBeLessThan(0.999);
    expect(stretched / plain).toBeGreaterThan(0.98);
  });

  it('is undone by the force of the press', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 500, noNaN: true }), allEnds, (force, ends) => {
        const one = { ...stretching, ends, tension: 3190 };
        const deflection = deflectionUnderPress({ ...one, force });
        expect(pressForce(one, deflection) / force).toBeCloseTo(1, 10);
      }),
    ));

  it('refuses a pull and a slack strand', () => {
    expect(() => deflectionUnderPress({ ...pressed, force: -1, tension: 1 })).toThrow(
      'force must be',
    );
    expect(() => deflectionUnderPress({ ...pressed, force: 1, tension: 0 })).toThrow(
      'tension must be',
    );
  });
});

describe('tensionFromPress', () => {
  it('is F·s/4d on a string, by hand: 40 N and 5 mm on 1.5 m are 3000 N', () => {
    const string = { span: 1.5, bendingStiffness: 0, ends: 'pinned' } as const;
    expect(tensionFromPress({ ...string, force: 40, deflection: 0.005 })).toBeCloseTo(3000, 8);
  });

  it('is so on a span of 6 m too, by hand: 40 N and 5 mm are 12 000 N', () => {
    const string = { span: 6, bendingStiffness: 0, ends: 'pinned' } as const;
    expect(tensionFromPress({ ...string, force: 40, deflection: 0.005 })).toBeCloseTo(12_000, 7);
  });

  it('gives back the tension that made the deflection', () =>
    fc.assert(
      fc.property(fc.double({ min: 200, max: 20000, noNaN: true }), allEnds, (tension, ends) => {
        const one = { ...stretching, ends };
        const force = pressForce({ ...one, tension }, 0.005);
        expect(tensionFromPress({ ...one, force, deflection: 0.005 }) / tension).toBeCloseTo(1, 9);
      }),
    ));

  it('refuses a force that bending alone would take: 48·E·I·d/s³', () => {
    const beam = { span: 0.5, bendingStiffness: 100, ends: 'pinned' } as const;
    const bending = (48 * 100 * 0.005) / 0.125;
    expect(() => tensionFromPress({ ...beam, force: 0.999 * bending, deflection: 0.005 })).toThrow(
      /force must be above 19\d\.\d+ N/,
    );
    expect(tensionFromPress({ ...beam, force: 1.01 * bending, deflection: 0.005 })).toBeGreaterThan(
      0,
    );
  });

  it('refuses the very force that it names as too little, by hand: 8EA·d³/(s²·L) is 12 N', () => {
    const rope = { span: 1, bendingStiffness: 0, ends: 'pinned', deflection: 0.01 } as const;
    const stretched = { ...rope, axialStiffness: 6e6, effectiveLength: 4 };
    const named = (force: number) => {
      try {
        return tensionFromPress({ ...stretched, force });
      } catch (error) {
        return Number(/above (\S+) N/.exec(String(error))?.[1]);
      }
    };
    // The limit hangs on the force itself by a billionth: a few rounds settle it.
    const limit = named(named(named(named(10))));
    expect(limit).toBeCloseTo(12, 6);
    expect(() => tensionFromPress({ ...stretched, force: limit })).toThrow(
      `force must be above ${limit} N`,
    );
  });

  it('refuses no force, no deflection and no span', () => {
    const press = { ...pressed, force: 40, deflection: 0.005 };
    expect(() => tensionFromPress({ ...press, force: 0 })).toThrow('force must be above 0 N');
    expect(() => tensionFromPress({ ...press, deflection: 0 })).toThrow(
      'deflection must be above 0 m',
    );
    expect(() => tensionFromPress({ ...press, span: 0 })).toThrow('span must be above 0 m');
  });
});
