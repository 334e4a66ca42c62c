/** Questions to the worker: one at a time, the newest wins, and a worker that fails is stood in for. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { emptyWorksheet } from '../../../src/core/worksheet.ts';
import type { Answers, Question } from '../../../src/worksheet/state/answers.ts';
import { Asker, onThisThread, type Start, twoAskers } from '../../../src/worksheet/state/asker.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';

const plan = {
  gaugeLength: 0.4,
  graduation: 1e-5,
  readTo: 1e-5,
  firstShare: 0.1,
  steps: 6,
  series: 1,
};
const about = (what: Question['about'], top = 0): Question => ({
  about: what,
  worksheet: { ...emptyWorksheet, label: `${top}` },
  key: `plan ${top}`,
  plan,
});
const answer = (torque: number): Answers => ({
  prediction: { trials: undefined, curve: [{ torque, low: 0, stress: 1, high: 2 }] },
});

/** A worker in the test's hands. */
function workshop() {
  const [told, asked, ended]: [Answers[], Question[], number[]] = [[], [], []];
  let answered: (answers: Answers) => void = () => {};
  let failed = () => {};
  let started = 0;
  const start: Start = (whenAnswered, whenFailed) => {
    started += 1;
    const mine = started;
    [answered, failed] = [whenAnswered, whenFailed];
    return { ask: (question) => void asked.push(question), end: () => void ended.push(mine) };
  };
  const asker = new Asker((answers) => void told.push(answers), start);
  return {
    asker,
    told,
    asked,
    ended,
    answer: (a: Answers) => answered(a),
    fail: () => failed(),
    workers: () => started,
  };
}

afterEach(() => void vi.useRealTimers());

describe('questions', () => {
  it('are asked one at a time, of each sort the newest; older answers are dropped', () => {
    const { asker, told, asked, answer: give } = workshop();
    const [first, second, third] = [1, 2, 3].map((top) => about('results', top));
    for (const question of [first, second, third]) asker.ask(question as Question);
    expect(asked).toEqual([first]);
    give(answer(1));
    expect(told).toEqual([]);
    expect(asked).toEqual([first, third]);
    give(answer(3));
    expect(told).toEqual([answer(3)]);
  });

  it('that take long wait for the quick, and are broken off by them', () => {
    const { asker, told, asked, ended, answer: give, workers } = workshop();
    asker.ask(about('stress'));
    const overtaken = answer(7);
    asker.ask(about('results'));
    expect(ended).toEqual([1]);
    expect(asked.map((question) => question.about)).toEqual(['stress', 'results']);
    give(overtaken);
    expect(told).toEqual([overtaken]);
    expect(asked.map((question) => question.about)).toEqual(['stress', 'results', 'stress']);
    expect(workers()).toBe(2);
  });

  it('about a plan wait for all others, are broken off by each, and asked again', () => {
    const { asker, told, asked, ended, answer: give } = workshop();
    asker.ask(about('stress'));
    asker.ask(about('plan'));
    expect(ended).toEqual([]);
    give({});
    asker.ask(about('results'));
    asker.ask(about('stress'));
    expect(ended).toEqual([1]);
    give({});
    give({});
    expect(asked.map((question) => question.about)).toEqual([
      ...['stress', 'plan', 'results', 'stress', 'plan'],
    ]);
    const reached = { plan: { key: 'plan 0' } };
    give(reached);
    expect(told.at(-1)).toEqual(reached);
  });

  it('about another plan take the place of the one that is out', () => {
    const { asker, told, asked, ended, answer: give } = workshop();
    asker.ask(about('plan', 1));
    asker.ask(about('plan', 2));
    expect(ended).toEqual([1]);
    give({ plan: { key: 'plan 2' } });
    expect(asked.map((question) => 'key' in question && question.key)).toEqual([
      'plan 1',
      'plan 2',
    ]);
    expect(told).toEqual([{ plan: { key: 'plan 2' } }]);
  });

  it('about all results come first, whatever else waits', () => {
    const { asker, asked, answer: give } = workshop();
    for (const what of ['plan', 'stress', 'results'] as const) asker.ask(about(what));
    for (let i = 0; i < 3; i += 1) give({});
    expect(asked.map((question) => question.about)).toEqual([
      ...['plan', 'stress', 'results', 'stress', 'plan'],
    ]);
  });

  it('that are forgotten are not answered', () => {
    const { asker, told, asked, ended, answer: give } = workshop();
    asker.ask(about('stress'));
    const late = give;
    asker.forget('stress');
    expect(ended).toEqual([1]);
    late(answer(1));
    expect(told).toEqual([]);
    asker.ask(about('results'));
    asker.ask(about('stress'));
    asker.forget('stress');
    give(answer(2));
    expect(asked.map((question) => question.about)).toEqual(['stress', 'results']);
  });
});

describe('where no worker answers', () => {
  const quick: Question = { about: 'results', worksheet: millA };

  it.each([
    [
      'starts',
      () => {
        throw new DOMException('none', 'SecurityError');
      },
    ],
    ['is found', (_: unknown, failed: () => void) => ({ ask: failed, end: () => {} })],
  ] as readonly [string, Start][])(
    'because none %s, the page does what is quick, later',
    async (_, start) => {
      vi.useFakeTimers();
      const told: Answers[] = [];
      const asker = new Asker((answers) => void told.push(answers), start);
      asker.ask(quick);
      expect(told).toEqual([]);
      await vi.waitFor(() => expect(told).toHaveLength(1));
      expect(told[0]?.prediction?.trials?.low).toBeGreaterThan(0);
      expect(told[0]?.results?.measured.ready).toBe(true);
    },
  );

  it('the long trials are left out, and plans', () => {
    const told: Answers[] = [];
    const asker = new Asker((answers) => void told.push(answers), onThisThread);
    asker.ask({ about: 'stress', worksheet: millA });
    expect(told).toEqual([{}]);
    asker.ask({ about: 'plan', key: 'of this', worksheet: millA, plan });
    expect(told.at(-1)).toEqual({ plan: { key: 'of this' } });
  });
});

describe('two workers', () => {
  it('leave a long question out while quick ones are answered, and start no quick one anew for it', () => {
    const [asked, ended, workers]: [Question['about'][], number[], ((a: Answers) => void)[]] = [
      [],
      [],
      [],
    ];
    const asker = twoAskers(
      () => {},
      (answered) => {
        const mine = workers.push(answered);
        return { ask: (question) => void asked.push(question.about), end: () => ended.push(mine) };
      },
    );
    asker.ask(about('results'));
    asker.ask(about('plan'));
    expect(asked).toEqual(['results', 'plan']);
    workers[0]?.({});
    asker.ask(about('results', 2));
    expect(asked).toEqual(['results', 'plan', 'results']);
    asker.forget('plan');
    expect([workers.length, ended]).toEqual([2, [2]]);
  });
});
