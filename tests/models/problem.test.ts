import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { checkProblem } from '../../src/components/lesson/names.ts';
import { models } from '../../src/lessons/all.ts';
import { kindOf, quantitySpec } from '../../src/models/define-model.ts';
import { drawProblem, judge, type ProblemTemplate, pieces } from '../../src/models/problem.ts';
import { formatInput } from '../../src/units/format-quantity.ts';
import { parseQuantity } from '../../src/units/reading/parse-quantity.ts';

const folder = new URL('../../content/problems/', import.meta.url);

function modelOf(lesson: string) {
  const model = models[lesson];
  if (!model) throw new Error(`${lesson} has no model`);
  return model;
}

const templates = readdirSync(folder).flatMap((file) => {
  const lesson = file.replace('.yaml', '');
  const { questions } = parse(readFileSync(new URL(file, folder), 'utf8')) as {
    questions: ProblemTemplate[];
  };
  return questions.map((template) => ({ name: `${lesson}: ${template.id}`, lesson, template }));
});

describe.each(templates)('the question $name', ({ lesson, template }) => {
  const model = modelOf(lesson);
  it('names only values of its model', () => {
    expect(() => checkProblem(lesson, model, template)).not.toThrow();
  });
  it.each(['metric', 'us'] as const)(
    'draws no numbers in which a slip could be right, or another slip (%s)',
    (system) => {
      for (let seed = 1; seed <= 1000; seed += 1) {
        const problem = drawProblem(template, model, seed, system);
        expect(Number.isFinite(problem.answer)).toBe(true);
        for (const { says, answer } of problem.slips)
          expect(judge(problem, answer), `seed ${seed}`).toEqual({ verdict: 'slip', says });
      }
    },
  );
  it('names each slip on the page', () => {
    const problem = drawProblem(template, model, 1);
    for (const slip of problem.slips) {
      expect(judge(problem, slip.answer), slip.says).toEqual({ verdict: 'slip', says: slip.says });
    }
  });
  it.each(['metric', 'us'] as const)('takes its answer as a box would write it (%s)', (system) => {
    const kind = kindOf(model, template.answer);
    for (let seed = 1; seed <= 50; seed += 1) {
      const problem = drawProblem(template, model, seed, system);
      const typed = parseQuantity(formatInput(problem.answer, kind, system), kind, system);
      expect(typed.ok && judge(problem, typed.value).verdict).toBe('right');
    }
  });
  it('draws inputs within the model’s ranges', () => {
    for (const [name, { from, to }] of Object.entries(template.draw)) {
      const { min, max } = quantitySpec(model, name);
      expect(from).toBeGreaterThanOrEqual(min);
      expect(to).toBeLessThanOrEqual(max);
    }
  });
});

describe('pieces', () => {
  it('tell text from values, and how many digits a value is to show', () =>
    expect(pieces('Of {torque}, {looseningTorque:4} is left.')).toEqual([
      { text: 'Of ' },
      { name: 'torque' },
      { text: ', ' },
      { name: 'looseningTorque', digits: 4 },
      { text: ' is left.' },
    ]));
});

describe('judge', () => {
  const problem = { values: {}, answer: 100, slips: [{ says: 'one strand for two', answer: 50 }] };
  it('takes an answer within rounding as right', () =>
    expect(judge(problem, 102).verdict).toBe('right'));
  it('names the slip', () =>
    expect(judge(problem, 50.4)).toEqual({ verdict: 'slip', says: 'one strand for two' }));
  it('says plainly when it is neither', () => expect(judge(problem, 70).verdict).toBe('wrong'));
});
