/** The worked examples themselves: enough of them, each sound, short, plain, and with no number that was typed. */
import { describe, expect, it } from 'vitest';
import { checkExample, wordsIn } from '../../../src/components/worked/checked.ts';
import { exampleTeller } from '../../../src/components/worked/told.ts';
import { WORKED_TOPICS } from '../../../src/components/worked/topics.ts';
import { wordsOf } from '../../../src/lessons/all.ts';
import { inputsAt, isChoice } from '../../../src/models/define-model.ts';
import { CHANGED, inputsIn } from '../../../src/models/example.ts';
import { exists } from '../../structure/project-files.ts';
import { allExamples, type KeyedExample, type WorkedFile } from './all-examples.ts';

const LEAST = 16;
const MOST_WORDS = 250;
const MOST_IN_SENTENCE = 20;
const PLACES = /^(Ottersleigh|Pondfork|Fennhope|Dunmarrow|Hobsend|Yarrock|The classroom rig)$/;
const examples = allExamples();
const NUMBER = /\{[^}]*\}/g;

/** Where agreement begins is the definition of the agreement number. */
const withoutNumbers = (text: string) =>
  text.replace(NUMBER, 'n').replace(/−1 to 1|beyond 1/g, 'n');

const textsOf = (example: WorkedFile): readonly string[] => [
  example.title,
  example.question,
  ...Object.values(wordsIn(example)),
  ...(example.caution ? [example.caution] : []),
];
const sentencesOf = (text: string) => text.split(/(?<=[.?!])\s+/);
const countOf = (text: string) => text.match(/[\p{L}\d{][^\s]*/gu)?.length ?? 0;
const repeated = (texts: readonly string[]) =>
  texts.filter((text, index) => texts.indexOf(text) !== index);

describe('the worked examples', () => {
  it(`are at least ${LEAST}`, () => expect(examples.length).toBeGreaterThanOrEqual(LEAST));

  it('have each a title and a question of their own', () => {
    expect(repeated(examples.map(({ example }) => example.title))).toEqual([]);
    expect(repeated(examples.map(({ example }) => example.question))).toEqual([]);
  });

  it('are of every lesson, every topic and every mill', () => {
    const count = (of: (example: WorkedFile) => string) =>
      new Set(examples.map(({ example }) => of(example))).size;
    expect(count(({ lesson }) => lesson)).toBe(12);
    expect(count(({ topic }) => topic)).toBe(WORKED_TOPICS.length);
    expect(count(({ place }) => place)).toBe(7);
  });
});

describe.each(examples)('$key', ({ key, file, example, model }: KeyedExample) => {
  it('names only what its model, its lesson and the site have', () => {
    checkExample(file, model, example);
    expect(key).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(example.place).toMatch(PLACES);
    expect(example.question).toMatch(/\?$/);
    expect(exists(`src/lessons/${example.lesson}/${example.figure}.figure.tsx`)).toBe(true);
    if (example.sheet) expect(exists(`content/mills/${example.sheet}.yaml`)).toBe(true);
    for (const lesson of example.also ?? [])
      expect(exists(`content/lessons/${lesson}.mdx`)).toBe(true);
  });

  it('tells a finite number wherever one stands, in both unit systems', () => {
    const words = wordsOf[example.lesson];
    if (!words) throw new Error(`${example.lesson} must have words`);
    const tell = exampleTeller(example, model, words);
    const numbers = Object.values(wordsIn(example))
      .flatMap((text) => tell(text))
      .flatMap((part) => ('text' in part ? [] : [part.value, part.valueUs]));
    expect(numbers.length).toBeGreaterThan(6);
    expect(numbers.filter((value) => !Number.isFinite(value))).toEqual([]);
  });

  it('has no number that was typed', () =>
    expect(
      textsOf(example)
        .map(withoutNumbers)
        .filter((text) => /\d/.test(text)),
    ).toEqual([]));

  it(`has at most ${MOST_WORDS} words, ${MOST_IN_SENTENCE} in a sentence`, () => {
    const texts = textsOf(example);
    expect(countOf(texts.join(' '))).toBeLessThanOrEqual(MOST_WORDS);
    const long = texts.flatMap(sentencesOf).filter((each) => countOf(each) > MOST_IN_SENTENCE);
    expect(long).toEqual([]);
  });

  it('changes one thing also for readers of US units', () => {
    const { input } = example.change;
    const spec = model.inputs[input];
    const [start, after] = [Object.keys(example.states)[0] ?? '', CHANGED].map(
      (state) => inputsAt(model, inputsIn(example, state), 'us')[input],
    );
    expect(after).not.toBe(start);
    expect(spec && isChoice(spec) ? typeof after : 'number').toBe(typeof after);
  });
});
