/** A sheet and its key: the same from the same seed, right by the model, and with slips that no rounding hides. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { models } from '../../../src/lessons/all.ts';
import { evaluated, type Model, numberAt } from '../../../src/models/define-model.ts';
import { drawProblem, type ProblemTemplate } from '../../../src/models/problem.ts';
import { drawnSheet, questionsAsked } from '../../../src/teaching/sheets/drawn.ts';
import { remarksOn, sharedByNeighbors } from '../../../src/teaching/sheets/remarks.ts';
import type { UnitSystem } from '../../../src/units/kinds.ts';
import { bank } from './bank.ts';
import { digestOf, textOfSheets } from './digest.ts';
import GOLDEN from './golden.json' with { type: 'json' };

const SYSTEMS: readonly UnitSystem[] = ['metric', 'us'];
/** What is worked out with the first call, and then is there. */
function once<Made>(make: () => Made): () => Made {
  let made: { readonly it: Made } | undefined;
  return () => {
    made ??= { it: make() };
    return made.it;
  };
}

const idsOf = (lessons: typeof bank, count: number) =>
  questionsAsked(lessons, count).map(({ template }) => template.id);

describe('the questions of a sheet', () => {
  const some = bank.slice(0, 3);
  it('are taken from every lesson in turn', () =>
    expect(questionsAsked(some, 4).map(({ lesson }) => lesson.order)).toEqual([1, 1, 2, 3]));

  it('are spread over the lessons where there are fewer questions than lessons', () =>
    expect(questionsAsked(bank, 6).map(({ lesson }) => lesson.order)).toEqual([
      2, 4, 6, 8, 10, 12,
    ]));

  it('are all there are where more are asked for, each once', () => {
    const all = idsOf(some, 12);
    expect(all).toHaveLength(some.flatMap(({ templates }) => templates).length);
    expect(idsOf([], 4)).toEqual([]);
  });
});

describe('a drawn sheet', () => {
  const asked = questionsAsked(bank, 12);

  it('is the same from the same seed, whatever else is on it', () => {
    const [one, again] = [drawnSheet(asked, models, 5, 'us'), drawnSheet(asked, models, 5, 'us')];
    expect(again).toEqual(one);
    const alone = drawnSheet(asked.slice(4, 5), models, 5, 'us');
    expect(alone.questions[0]).toEqual(one.questions[4]);
  });

  it('has other numbers from another seed', () => {
    const [one, other] = [drawnSheet(asked, models, 5, 'us'), drawnSheet(asked, models, 6, 'us')];
    const asks = (sheet: typeof one) => sheet.questions.map(({ ask }) => ask);
    expect(asks(one).filter((ask) => asks(other).includes(ask))).toEqual([]);
  });

  it('shares a question that has one draw only, and the teacher is told', () => {
    const [lesson] = bank;
    const [template] = lesson?.templates ?? [];
    if (!lesson || !template) throw new RangeError('bank must hold a question');
    const draw = Object.fromEntries(
      Object.entries(template.draw).map(([name, range]) => [name, { ...range, to: range.from }]),
    );
    const one = questionsAsked([{ ...lesson, templates: [{ ...template, draw }] }], 1);
    const sheets = [1, 2].map((seed) => drawnSheet(one, models, seed, 'metric'));
    expect(sharedByNeighbors(sheets)).toEqual([1]);
    expect(remarksOn(sheets, 1)).toContain('question 1');
    expect(remarksOn(sheets, 2)).toContain('1 question in all');
    expect(remarksOn(sheets.slice(1), 1)).toBe('');
  });

  it('names a slip with a unit of one system on sheets of that system alone', () => {
    const slips = (system: UnitSystem) =>
      drawnSheet(questionsAsked(bank, Number.POSITIVE_INFINITY), models, 3, system)
        .questions.flatMap((question) => question.slips)
        .filter(({ says }) => says.includes('foot-pounds')).length;
    expect([slips('metric'), slips('us')]).toEqual([0, 4]);
  });

  it('speaks of its reader’s units alone in the key', () => {
    const said = (system: UnitSystem) =>
      drawnSheet(questionsAsked(bank, Number.POSITIVE_INFINITY), models, 3, system)
        .questions.flatMap(({ slips }) => slips.map(({ says }) => says))
        .join(' ');
    expect(said('us')).not.toMatch(/[GMk]Pa|newton|N·m|millimeter/);
    expect(said('metric')).not.toMatch(/psi|ksi|foot-pound/);
  });

  it('needs the models of its lessons', () =>
    expect(() => drawnSheet(asked, {}, 1, 'metric')).toThrow(RangeError));

  it('says the same of its slips on every sheet of a set', () => {
    const saysOf = (seed: number, system: UnitSystem) =>
      drawnSheet(asked, models, seed, system).questions.map(({ slips }) =>
        slips.map(({ says }) => says),
      );
    for (const system of SYSTEMS)
      for (let seed = 2; seed <= 40; seed += 1)
        expect(saysOf(seed, system)).toEqual(saysOf(1, system));
  });

  it.each(['twelve', 'whole'] as const)(
    'is the same to the letter on every machine (%s)',
    (part) => {
      const questions = questionsAsked(bank, part === 'twelve' ? 12 : Number.POSITIVE_INFINITY);
      const digests = SYSTEMS.map((system) => {
        const sheets = Array.from({ length: GOLDEN.sheets }, (_, place) =>
          drawnSheet(questions, models, GOLDEN.seed + place, system),
        );
        return [system, digestOf(textOfSheets(sheets))];
      });
      expect(Object.fromEntries(digests)).toEqual(GOLDEN[part]);
    },
  );
});

const folder = new URL('../../../content/problems/', import.meta.url);
const templates = readdirSync(folder).flatMap((file) => {
  const lesson = file.replace('.yaml', '');
  const { questions } = parse(readFileSync(new URL(file, folder), 'utf8')) as {
    questions: ProblemTemplate[];
  };
  return questions.map((template) => ({ name: `${lesson}: ${template.id}`, lesson, template }));
});

describe.each(templates)('the key to $name', ({ lesson, template }) => {
  const model = models[lesson] as Model;
  it.each(SYSTEMS)(
    'is the model’s answer to the numbers asked, a thousand times (%s)',
    (system) => {
      for (let seed = 1; seed <= 1000; seed += 1) {
        const { values, answer } = drawProblem(template, model, seed, system);
        const inputs = Object.fromEntries(
          Object.keys(model.inputs).map((name) => [name, values[name] ?? Number.NaN]),
        );
        expect(numberAt(evaluated(model, inputs), template.answer)).toBe(answer);
      }
    },
  );
});

describe.each(SYSTEMS)('a thousand sheets with every question there is (%s)', (system) => {
  const all = questionsAsked(bank, Number.POSITIVE_INFINITY);
  const drawn = once(() =>
    Array.from({ length: 1000 }, (_, place) => drawnSheet(all, models, place + 1, system)),
  );

  it('differ each from the sheet behind it in every question', () =>
    expect(sharedByNeighbors(drawn())).toEqual([]));

  it('print no slip as the answer, and no two slips alike', () => {
    const made = all.map(
      ({ template }) => template.slips.filter(({ only = system }) => only === system).length,
    );
    const alike = drawn().flatMap(({ questions }, sheet) =>
      questions.flatMap(({ answer, slips }, place) => {
        const numbers = new Set([answer, ...slips.map((slip) => slip.answer)]);
        const isRight = numbers.size === (made[place] ?? Number.NaN) + 1;
        return isRight ? [] : [`${all[place]?.template.id} on sheet ${sheet + 1}`];
      }),
    );
    expect(alike).toEqual([]);
  });
});
