/** The teaching pack's content: minutes that add up, keys that lead somewhere, one right answer, cautions once. */
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { figuresIn } from '../../src/components/embed/figures.ts';
import { blanksOf } from '../../src/components/teach/blanks.ts';
import { type Timing, totalMinutes } from '../../src/components/teach/clock.ts';
import { models } from '../../src/lessons/all.ts';
import { evaluated, inputsAt, type Model, numberAt } from '../../src/models/define-model.ts';
import { readAddress } from '../../src/practice/state/address.ts';
import { LEVEL_WORDS } from '../../src/practice/words/level-words.ts';
import { frontmatterOf } from './content-files.ts';
import { filesUnder, textOf } from './project-files.ts';

interface Plan {
  readonly minutes: number;
  readonly lessons: readonly string[];
  readonly handouts: readonly string[];
  readonly timings: readonly Timing[];
}

const slugs = filesUnder('content/lessons').map((path) => path.replace(/^.*\/|\.mdx$/g, ''));
const handouts = filesUnder('content/handouts').map((path) => path.replace(/^.*\/|\.yaml$/g, ''));
const figuresShown = new Set(
  slugs.flatMap((slug) =>
    figuresIn(textOf(`content/lessons/${slug}.mdx`)).map((name) => `${slug}/${name}`),
  ),
);
const plans = filesUnder('content/workshops').map((path) => {
  const text = textOf(path);
  return { path, text, ...(parse(frontmatterOf(text)) as Plan) };
});

describe('the plans', () => {
  it('are one workshop of 90 minutes and four of 45', () =>
    expect(plans.map(({ minutes }) => minutes).toSorted()).toEqual([45, 45, 45, 45, 90]));

  it.each(plans)('$path: its parts fill its minutes', ({ minutes, timings }) =>
    expect(totalMinutes(timings)).toBe(minutes),
  );

  it.each(plans)('$path: its lessons and hand-outs are there', ({ lessons, handouts: sheets }) => {
    expect(lessons.filter((key) => !slugs.includes(key))).toEqual([]);
    expect(sheets.filter((key) => !handouts.includes(key))).toEqual([]);
  });

  it.each(plans)('$path: each part names what it needs, and all of it is there', (plan) => {
    for (const { what, handout, figures = [], go = [], tell = [] } of plan.timings) {
      const needs = [...(handout ? [handout] : []), ...figures, ...go, ...tell];
      expect(needs.length, what).toBeGreaterThan(0);
      if (handout) expect(plan.handouts, what).toContain(handout);
      for (const { says } of tell) expect(says, what).toMatch(/\{[a-zA-Z]+(:\d)?\}/);
    }
    const shown = plan.timings.flatMap(({ figures = [] }) => figures);
    expect(shown.filter((figure) => !figuresShown.has(figure))).toEqual([]);
  });

  it.each(plans)('$path: warns once, and says what to do when numbers disagree', ({ text }) => {
    expect(text.match(/<Caution>/g)).toHaveLength(1);
    expect(text).toMatch(/^## When the numbers disagree$/m);
  });

  it.each(plans)('$path: names a mill of the bench for those without a rig', ({ text }) => {
    const links = [...text.matchAll(/\/bench\/#([^"]*)"(?:>|, says: ")([^"<]*)/g)];
    expect(links.length).toBeGreaterThan(0);
    for (const [, fragment = '', says] of links) {
      const { place, refused } = readAddress(fragment);
      expect(refused).toEqual([]);
      expect(says).toContain(`mill ${place?.seed}`);
      expect(says).toContain(`level “${LEVEL_WORDS[place?.level ?? 'nasty'][0]}”`);
    }
  });

  it.each(plans)('$path: types no quantity', ({ text }) => {
    const quantities = /\d\s*(mm|MPa|N·m|psi|lbf|inch|in\b|%|µm|kN)/;
    expect(text.match(quantities)).toBeNull();
  });
});

describe('the hand-outs', () => {
  it('are one for each lesson', () => expect(handouts.toSorted()).toEqual(slugs.toSorted()));

  it.each(handouts)('%s has blanks to fill, and types no quantity', (slug) => {
    const text = textOf(`content/handouts/${slug}.yaml`);
    const { tasks } = parse(text) as { tasks: readonly { readonly says: string }[] };
    expect(tasks.flatMap(({ says }) => blanksOf(says)).length).toBeGreaterThanOrEqual(4);
    expect(text.match(/\d\s*(mm|MPa|N·m|psi|lbf|%|µm|kN)/)).toBeNull();
  });
});

interface Concept {
  readonly id: string;
  readonly lesson: string;
  readonly at?: Readonly<Record<string, number>>;
  readonly options: readonly {
    readonly value?: string;
    readonly times?: number;
    readonly right?: true;
    readonly slip?: string;
  }[];
}
const concepts = parse(textOf('content/before-and-after.yaml')) as readonly Concept[];

describe('the questions before and after', () => {
  it('are ten, with four answers each', () =>
    expect(concepts.map(({ options }) => options.length)).toEqual(Array(10).fill(4)));

  it.each(concepts)(
    '$id has one right answer; each other one is a slip with a name',
    ({ options }) => {
      expect(options.filter(({ right }) => right)).toHaveLength(1);
      expect(options.filter(({ right, slip }) => !right && !slip)).toEqual([]);
    },
  );

  it('have their right answers spread over the letters', () => {
    const places = concepts.map(({ options }) => options.findIndex(({ right }) => right));
    for (const place of [0, 1, 2, 3])
      expect(places.filter((each) => each === place).length).toBeLessThanOrEqual(3);
  });

  it.each(concepts.filter(({ options }) => options.some(({ value }) => value)))(
    '$id offers four numbers that no rounding confuses',
    ({ lesson, at = {}, options }) => {
      const model = models[lesson] as Model;
      const values = evaluated(model, inputsAt(model, at, 'metric'));
      const numbers = options.map(({ value = '', times = 1 }) => numberAt(values, value) * times);
      const sorted = numbers.toSorted((a, b) => a - b);
      for (const [place, number] of sorted.slice(1).entries())
        expect(number / (sorted[place] ?? 0)).toBeGreaterThan(1.2);
    },
  );

  it('takes the stress over twice the gauge length from the model too', () => {
    const model = models['stiff-spring'] as Model;
    const stressOver = (gaugeLength: number) =>
      numberAt(
        evaluated(model, inputsAt(model, { stretch: 0.0002, gaugeLength }, 'metric')),
        'hookeStress',
      );
    expect(stressOver(0.6) / stressOver(0.3)).toBeCloseTo(0.5, 12);
  });
});
