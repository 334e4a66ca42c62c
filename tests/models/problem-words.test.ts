/** What a drawn question says: its numbers in the reader's unit, never the name of one in braces. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { models } from '../../src/lessons/all.ts';
import { defaults, evaluated, type Model } from '../../src/models/define-model.ts';
import { drawProblem, type ProblemTemplate } from '../../src/models/problem.ts';
import { inWords } from '../../src/models/problem-words.ts';

const folder = new URL('../../content/problems/', import.meta.url);
const strip = models['stiff-spring'] as Model;

describe('a text with names in it', () => {
  const values = evaluated(strip, defaults(strip));

  it('has the numbers in either system', () => {
    expect(inWords('Over {gaugeLength}.', strip, values, 'metric')).toBe('Over 300\u202fmm.');
    expect(inWords('Over {gaugeLength}.', strip, values, 'us')).toBe('Over 11.81\u202fin.');
  });

  it('has as many digits as it asks for', () =>
    expect(inWords('{hookeStress:2}', strip, values, 'metric')).toBe('68\u202fMPa'));

  it('is refused where it names nothing of the model', () =>
    expect(() => inWords('{nothing}', strip, values, 'us')).toThrow(RangeError));
});

describe.each(readdirSync(folder))('every text of %s', (file) => {
  const model = models[file.replace('.yaml', '')] as Model;
  const { questions } = parse(readFileSync(new URL(file, folder), 'utf8')) as {
    questions: ProblemTemplate[];
  };
  it.each(['metric', 'us'] as const)('says its numbers, those of the slips too (%s)', (system) => {
    for (const { ask, because, slips, ...rest } of questions) {
      const { values } = drawProblem({ ...rest, ask, because, slips }, model, 1, system);
      for (const text of [ask, because, ...slips.map(({ says }) => says)])
        expect(inWords(text, model, values, system)).not.toMatch(/[{}]|NaN|undefined/);
    }
  });
});
