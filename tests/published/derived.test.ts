/** The cases worked with 40 digits by other code, and the six invented mills, against ours. */
import { describe, expect, it } from 'vitest';
import {
  clampedFrequencyFletcher,
  clampedFrequencySeries,
} from '../../src/core/span/clamped-frequency.ts';
import { propagateByTrials } from '../../src/core/trials.ts';
import { chordShift, gaugeWeightShift } from '../../src/core/zero/false-zero.ts';
import { millAnswers } from './answers/derived-mills.ts';
import { runningAnswers } from './answers/derived-running.ts';
import { screwCaseAnswers } from './answers/derived-screw.ts';
import { spanCaseAnswers } from './answers/derived-span.ts';
import { statisticsAnswers } from './answers/derived-statistics.ts';
import { stillAnswers } from './answers/derived-still.ts';
import { numbersAt } from './cases.ts';
import {
  type DerivedAnswers,
  type DerivedCase,
  derivedCases,
  meets,
  readerOf,
} from './derived-cases.ts';
import { checkRows } from './rows.ts';

const answers: DerivedAnswers = {
  ...stillAnswers,
  ...screwCaseAnswers,
  ...runningAnswers,
  ...spanCaseAnswers,
  ...statisticsAnswers,
  ...millAnswers,
};

/** Exact values of what the core finds by trials only; tested at the end of this file. */
const BY_TRIALS = ['irwinHall4'];

const DEGREES_OF_D = 'gum-h1-end-gauge published > dofOfD';

const labels = [...new Set(derivedCases.map((each) => each.function))];
const casesOf = (label: string) => derivedCases.filter((each) => each.function === label);
const oneCase = (label: string): DerivedCase => casesOf(label)[0] as DerivedCase;

function complaint(each: DerivedCase): readonly string[] {
  const ours = answers[each.function]?.(readerOf(each.inputs), each.inputs) ?? Number.NaN;
  return meets(ours, each) ? [] : [`${each.name}: ${ours}, not ${each.expected}`];
}

describe('cases worked out by other code', () => {
  it.each(labels.filter((label) => !BY_TRIALS.includes(label)))('are met: %s', (label) =>
    expect(casesOf(label).flatMap(complaint)).toEqual([]),
  );

  it('are all here, and every answer is asked for', () => {
    expect(derivedCases).toHaveLength(782);
    expect([...Object.keys(answers), ...BY_TRIALS].sort()).toEqual([...labels].sort());
  });

  it('would not be met by figures a little further off than they allow', () => {
    const off = ({ expected, tolerance }: DerivedCase) => {
      if (typeof expected !== 'number' || tolerance === null) return !expected;
      const allowed =
        'absolute' in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(expected);
      return expected + 1.01 * allowed + Number.MIN_VALUE + Math.abs(expected) * 1e-15;
    };
    expect(derivedCases.filter((each) => meets(off(each), each)).map(({ name }) => name)).toEqual(
      [],
    );
  });
});

describe('where a case needs a word', () => {
  it('chordShift: the exact chord, not the first term of its series that the note in the case names', () => {
    const { inputs, expected } = oneCase('chordShift');
    const n = readerOf(inputs);
    const exact = chordShift({ gaugeLength: n('L0'), coilRadius: n('rho') });
    const firstTerm = n('L0') ** 3 / (24 * n('rho') ** 2);
    expect(Math.abs(exact / Number(expected) - 1)).toBeLessThan(1e-9);
    expect(Math.abs(firstTerm / Number(expected) - 1)).toBeGreaterThan(1e-5);
  });

  it('clampedFreqFletcher: the series cut after its first power, not the product in print', () => {
    const { inputs, expected } = oneCase('clampedFreqFletcher');
    const n = readerOf(inputs);
    const string = { tension: n('T'), massPerLength: n('m'), bendingStiffness: n('EI') };
    const product = clampedFrequencyFletcher({ ...string, span: n('s') });
    const cut = clampedFrequencySeries({ ...string, span: n('s') });
    expect(Math.abs(cut / Number(expected) - 1)).toBeLessThan(1e-11);
    expect(Math.abs(product / Number(expected) - 1)).toBeGreaterThan(1e-5);
  });

  it('gaugeWeightShift: given as what to add for a bar on top; underneath it is to be taken off', () => {
    const { inputs, expected } = oneCase('gaugeWeightShift');
    const n = readerOf(inputs);
    const bar = { height: -n('h'), weight: n('W'), tension: n('T') };
    expect(gaugeWeightShift(bar)).toBeCloseTo(-Number(expected), 15);
  });

  it('combine.uc: the last part of d rounded to 6.7 nm, where the GUM has 20 nm over 3', () => {
    const rounded = Math.hypot(5.8, 3.9, 6.7);
    expect(numbersAt(oneCase('combine.uc').inputs, 'contributions_nm')[1]).toBeCloseTo(rounded, 12);
    const printed = checkRows.filter(({ caseId, path }) => `${caseId} ${path}` === DEGREES_OF_D);
    expect(printed.map(({ ours }) => ours.toFixed(1))).toEqual(['25.6']);
  });

  /**
   * No function of the core gives the exact end; trials do, to their own standard error:
   * √(p(1 − p)/N) over the density there, which for four rectangles is (4 − z)³/6 over √12.
   */
  it('irwinHall4: met by trials within four of their standard errors', () => {
    const { inputs, expected } = oneCase('irwinHall4');
    const input = { value: 0, halfWidth: Math.sqrt(3), shape: 'rectangular' as const };
    const options = { probability: 0.95, trials: 1_000_000, seed: 1 };
    const sum = (v: Readonly<Record<'a' | 'b' | 'c' | 'd', number>>) => v.a + v.b + v.c + v.d;
    const { high, low } = propagateByTrials(
      sum,
      { a: input, b: input, c: input, d: input },
      options,
    );
    const p = readerOf(inputs)('p');
    const place = Number(expected) / Math.sqrt(12) + 2;
    const density = (4 - place) ** 3 / 6 / Math.sqrt(12);
    const standardError = Math.sqrt((p * (1 - p)) / options.trials) / density;
    expect(Math.abs(high - Number(expected))).toBeLessThan(4 * standardError);
    expect(Math.abs(low + Number(expected))).toBeLessThan(4 * standardError);
    expect(standardError).toBeLessThan(0.006);
  });
});
