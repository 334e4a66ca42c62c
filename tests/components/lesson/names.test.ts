/** A name misspelt in a lesson's words or in its questions is refused with the file that has it, and never shown as a number. */
import { describe, expect, it } from 'vitest';
import { lessonContext, valuesAt } from '../../../src/components/lesson/context.ts';
import { equationHtml } from '../../../src/components/lesson/equation.ts';
import {
  checkProblem,
  inputNamed,
  inputsNamed,
  quantityNamed,
} from '../../../src/components/lesson/names.ts';
import type { ProblemTemplate } from '../../../src/models/problem.ts';

const lesson = lessonContext('stiff-spring', []);
const FILE = 'content/lessons/stiff-spring.mdx: ';

describe('the names in a lesson’s words', () => {
  it('find what a quantity is', () =>
    expect(quantityNamed(lesson, 'V n', 'stress')).toEqual({
      kind: 'stress',
      ink: 'steel',
      symbol: '\\sigma',
      label: 'stress in the steel',
    }));
  it.each(['stres', 'released', 'toString', ''])('refuse %s as a quantity', (name) =>
    expect(() => quantityNamed(lesson, 'V n', name)).toThrow(
      `${FILE}V n must be a quantity of stiff-spring (was ${name})`,
    ),
  );
  it.each(['strech', 'stress', 'toString'])('refuse %s as an input', (name) =>
    expect(() => inputNamed(lesson, 'LiveInput n', name)).toThrow(
      `${FILE}LiveInput n must be an input of stiff-spring (was ${name})`,
    ),
  );
  it.each([
    [{ strech: 1e-4 }, 'at must be an input of stiff-spring (was strech)'],
    [{ released: 'letgo' }, 'at released must be a value of stiff-spring (was letgo)'],
    [{ released: 1 }, 'at released must be a value of stiff-spring (was 1)'],
    [{ stretch: 1 }, 'at stretch must be a value of stiff-spring (was 1)'],
    [{ stretch: 'long' }, 'at stretch must be a value of stiff-spring (was long)'],
  ])('refuse the inputs %j', (at, reason) =>
    expect(() => valuesAt(lesson, at)).toThrow(FILE + reason),
  );
  it('take inputs as they are given', () => {
    const at = { stretch: 1e-4, released: 'letGo' };
    expect(inputsNamed(lesson, 'LiveInput when', at)).toBe(at);
  });
  it.each([
    ['\\q{stres}', '\\q must be a quantity of stiff-spring (was stres)'],
    ['\\v{stres}', '\\v must be a quantity of stiff-spring (was stres)'],
  ])('refuse %s in an equation', (tex, reason) =>
    expect(() => equationHtml(tex, lesson, true)).toThrow(FILE + reason),
  );
  it('belong to a lesson that there is', () =>
    expect(() => lessonContext('stif-spring', [])).toThrow(/must have a folder/));
});

const question: ProblemTemplate = {
  id: 'pull',
  ask: 'Stretched by {stretch} over {gaugeLength}: what is the stress?',
  draw: { stretch: { from: 1e-4, to: 2e-4, step: 1e-5 } },
  fixed: { released: 'held' },
  answer: 'stress',
  because: 'It is {stress:2}.',
  slips: [{ says: 'no', answer: 'hookeStress', inputsTimes: { gaugeLength: 2 } }],
};
const range = { from: 1e-4, to: 2e-4, step: 1e-5 };

describe('the names in a question', () => {
  const check = (change: Partial<ProblemTemplate>) => () =>
    checkProblem('content/problems/x.yaml', lesson.model, { ...question, ...change });

  it('are taken where the model has them all', () => expect(check({})).not.toThrow());
  it.each<[string, Partial<ProblemTemplate>]>([
    ['ask must be a quantity', { ask: 'Of {strech}?' }],
    ['because must be a quantity', { because: 'It is {stres}.' }],
    ['because must be words and {names}', { because: 'It is {stress:22}.' }],
    ['because must be words and {names}', { because: 'It is {stress.' }],
    ['answer must be a quantity', { answer: 'stres' }],
    ['answer must be a quantity', { answer: 'released' }],
    ['draw must be an input', { draw: { strech: range } }],
    ['draw must be an input', { draw: { stress: range } }],
    ['draw stretch must be a value', { draw: { stretch: { ...range, to: 1 } } }],
    ['fixed must be an input', { fixed: { relased: 'held' } }],
    ['fixed released must be a value', { fixed: { released: 'letgo' } }],
    ['answer of a slip must be a quantity', { slips: [{ says: 'no', answer: 'stres' }] }],
    ['words of a slip must be a quantity', { slips: [{ says: 'Times {stres}.' }] }],
    ['inputsTimes must be an input', { slips: [{ says: 'no', inputsTimes: { strech: 2 } }] }],
    ['inputsTimes must be a quantity', { slips: [{ says: 'no', inputsTimes: { released: 2 } }] }],
  ])('are refused: %s', (reason, change) =>
    expect(check(change)).toThrow(`content/problems/x.yaml: pull: ${reason} of stiff-spring (was `),
  );
});
