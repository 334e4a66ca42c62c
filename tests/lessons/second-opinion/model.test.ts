/** What the lesson claims of its spans, against the derived figures of the invented mills and against the core. */
import { describe, expect, it } from 'vitest';
import { agreementNumber } from '../../../src/core/agreement.ts';
import { checkHalfWidths, sectionHalfWidths } from '../../../src/core/assumptions.ts';
import { propagate } from '../../../src/core/budget.ts';
import { loopLengthEqual } from '../../../src/core/loop.ts';
import { stressFromPitch, tensionFromPress } from '../../../src/core/span.ts';
import { secondOpinion as model } from '../../../src/lessons/second-opinion/model.ts';
import {
  forcesOf,
  STANDARD_GRAVITY,
  STRAND,
} from '../../../src/lessons/second-opinion/press/forces.ts';
import { MISTAKES, type Mistake } from '../../../src/lessons/second-opinion/routes/mistakes.ts';
import {
  hiddenStress,
  READ,
  routesWith,
} from '../../../src/lessons/second-opinion/routes/ottersleigh.ts';
import { sharesOf } from '../../../src/lessons/second-opinion/stress-from-note.ts';
import { BANDS, sharpeningOf, stripOf } from '../../../src/lessons/second-opinion/strip.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';
import { bandArea, OTTERSLEIGH } from '../../../src/models/mills/ottersleigh.ts';
import { numberAt } from '../../published/cases.ts';
import { derivedMills } from '../../published/derived-cases.ts';

const at = (inputs: Partial<InputsOf<typeof model>>) =>
  evaluated(model, inputsAt(model, inputs, 'metric'));
const target = { stress: 110e6, span: 0.55 };

describe('the note', () => {
  it('lies between the derived ones of the guide span, pinned and clamped', () => {
    const { pitch, strandPitch } = at(target);
    expect(pitch).toBeGreaterThan(102.705);
    expect(pitch).toBeLessThan(107.583);
    expect(strandPitch).toBeCloseTo(41.7546, 4); // derived, free strand wheel to wheel
  });
  it('hardly knows the section: four times the pull, within a twentieth the same note', () => {
    const { pitch, otherPitch, strandPull, otherPull } = at(target);
    expect(otherPull / strandPull).toBeGreaterThan(3.9);
    expect(Math.abs(otherPitch / pitch - 1)).toBeLessThan(0.05);
  });
  it('nearly doubles with four times the stress', () => {
    const ratio = at({ ...target, stress: 160e6 }).pitch / at({ ...target, stress: 40e6 }).pitch;
    expect(ratio).toBeGreaterThan(1.9);
    expect(ratio).toBeLessThan(2);
  });
  it('leads back to the stress, and as the second tone to less than a quarter', () => {
    const { pitch } = at(target);
    const { noteStress, ifSecond } = at({ ...target, note: pitch });
    expect(noteStress).toBeCloseTo(110e6, 0);
    expect(noteStress / ifSecond).toBeGreaterThan(4); // stiffness adds to a slacker band’s note
    expect(noteStress / ifSecond).toBeLessThan(5);
  });
  it('that is too low for a short span is called so, and taken for the lowest', () => {
    const { isTooLow, noteStress, lowestNote } = at({ span: 0.2, note: 40 });
    expect(isTooLow).toBe(1);
    expect(noteStress).toBeCloseTo(
      stressFromPitch({ ...stripOf('narrow', 0.2), frequency: lowestNote }),
      0,
    );
  });
  it('raises its tones by the square of their number, as the core has them', () => {
    const { pitch, secondTone, thirdTone } = at(target);
    const sharpening = sharpeningOf(stripOf('narrow', 0.55));
    const base = pitch - sharpening / pitch;
    for (const [number, tone] of [
      [2, secondTone],
      [3, thirdTone],
    ] as const)
      expect(
        Math.abs((number * (base + (sharpening * number ** 2) / base)) / tone - 1),
      ).toBeLessThan(2e-3);
  });
});

describe('the uncertainties', () => {
  it('of a stress by its note are what the core’s budget gives', () => {
    const found = { note: 104.9, noteWidth: 0.5, span: 0.55, band: 'narrow' } as const;
    const strip = stripOf('narrow', found.span);
    const { noteStress, noteExpanded } = at(found);
    const end = strip.thickness * Math.sqrt(strip.youngsModulus / (12 * noteStress));
    const teeth = OTTERSLEIGH.widthOverTeeth - OTTERSLEIGH.bodyWidth;
    const { value, standardUncertainty } = propagate(
      ({ note, span, held, fill }) =>
        stressFromPitch({
          ...strip,
          frequency: note,
          span: span - held,
          massRatio: 1 + (fill * teeth) / OTTERSLEIGH.bodyWidth,
        }),
      {
        note: { value: found.note, standardUncertainty: found.noteWidth / 2 },
        span: { value: found.span, halfWidth: checkHalfWidths.span, shape: 'rectangular' },
        held: { value: 0, halfWidth: end, shape: 'rectangular' },
        fill: { value: 0.5, halfWidth: checkHalfWidths.toothFill, shape: 'rectangular' },
      },
      { probability: 0.95 },
    );
    expect(value).toBeCloseTo(noteStress, 0);
    // to first order: how the hold of the ends changes with the stress is left out
    expect(Math.abs(noteExpanded / (2 * standardUncertainty) - 1)).toBeLessThan(0.04);
    const { ends, ...others } = sharesOf(found, noteStress);
    expect(ends).toBeGreaterThan(Math.max(...Object.values(others))); // what holds the ends weighs most
  });

  it('of a stress by a weight are what the core’s budget gives', () => {
    const { bodyWidth, thickness } = OTTERSLEIGH;
    const { pressStress, pressExpanded } = at({ weight: 5, deflection: 0.0051 });
    const bounds = (value: number, halfWidth: number) => ({
      value,
      halfWidth,
      shape: 'rectangular' as const,
    });
    const { value, standardUncertainty } = propagate(
      ({ weight, moved, width, thick }) => forcesOf(weight, moved).full / (width * thick),
      {
        weight: bounds(5, 5 * checkHalfWidths.weight),
        moved: bounds(0.0051, checkHalfWidths.deflection),
        width: bounds(bodyWidth, sectionHalfWidths.bodyWidth),
        thick: bounds(thickness, sectionHalfWidths.thickness),
      },
      { probability: 0.95 },
    );
    expect(value).toBeCloseTo(pressStress, 0);
    expect(Math.abs(pressExpanded / (2 * standardUncertainty) - 1)).toBeLessThan(0.03);
  });
});

describe('the weight', () => {
  it('of the derived case, whose frame is rigid, tells the derived stress; a frame that yields, half a percent more', () => {
    const force = 48.9004; // N, derived: it moves the free strand by 5 mm
    const press = { ...STRAND, force, deflection: 0.005 };
    const rigid = tensionFromPress({ ...press, effectiveLength: loopLengthEqual(OTTERSLEIGH) });
    expect(Math.abs(rigid / bandArea / 110e6 - 1)).toBeLessThan(1e-5);
    const { full } = forcesOf(force / STANDARD_GRAVITY, 0.005);
    expect(full / rigid).toBeGreaterThan(1.005);
    expect(full / rigid).toBeLessThan(1.007);
  });
  it('hangs from the strand of Ottersleigh, less than a two-hundredth aside at the start', () => {
    const { strandSpan, deflection, mostDeflection } = at({});
    expect(strandSpan).toBe(STRAND.span);
    expect(deflection).toBeLessThan(mostDeflection);
  });
});

describe('the three routes', () => {
  const apart = (mistake: Mistake) => {
    const { dialPluck, dialPress, pluckPress } = routesWith(mistake);
    const pairs = Object.entries({ dialPluck, dialPress, pluckPress });
    return pairs.filter(([, number]) => Math.abs(number) > 1).map(([name]) => name);
  };
  it('hold the hidden stress without a mistake, and were read as its instruments show it', () => {
    const { dial, pluck, press } = routesWith('nothing');
    for (const { value, expanded } of [dial, pluck, press])
      expect(Math.abs(value - hiddenStress)).toBeLessThan(expanded);
    expect(hiddenStress).toBeCloseTo(109.51e6, -4);
    expect(READ.deflection).toBeCloseTo(0.0051, 6);
  });
  it.each([
    ['nothing', []],
    ['section', ['pluckPress']],
    ['zero', ['dialPluck', 'dialPress']],
    ['harmonic', ['dialPluck', 'pluckPress']],
    ['span', ['dialPluck', 'pluckPress']],
  ] as const)('notice %s by the pairs %j', (mistake, pairs) =>
    expect(apart(mistake)).toEqual(pairs),
  );
  it('catch a section from the least mistake on that the model names', () => {
    const { pluck, press, dial } = routesWith('nothing');
    const taken = (share: number) => ({
      value: press.value / (1 + share),
      expanded: press.expanded / (1 + share),
    });
    const { seenByNote, seenByDial } = at({});
    for (const [other, share] of [
      [pluck, seenByNote],
      [dial, seenByDial],
    ] as const) {
      expect(agreementNumber(other, taken(0.99 * share))).toBeLessThan(1);
      expect(agreementNumber(other, taken(1.01 * share))).toBeGreaterThan(1);
    }
    expect(seenByNote).toBeLessThan(seenByDial);
  });
  it('are all in the model, in the order of the mistakes', () => {
    for (const mistake of MISTAKES) {
      const { dial, pluckPress } = routesWith(mistake);
      expect(at({ mistake }).dialStress).toBeCloseTo(dial.value, 0);
      expect(at({ mistake }).pluckPress).toBeCloseTo(pluckPress, 6);
    }
  });
});

describe('the wide band', () => {
  it('is that of mill F', () => {
    const { inputs } = derivedMills['F'] ?? {};
    expect(BANDS.wide).toEqual({
      widthOverTeeth: numberAt(inputs, 'W'),
      bodyWidth: numberAt(inputs, 'body'),
      thickness: numberAt(inputs, 't'),
    });
  });
});
