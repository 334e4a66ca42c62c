/** What the drawing of the chain promises: parts that add up, travel that is the core's own, numbers that stand on it. */
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { FigureBody } from '../../../src/figures/FigureBody.tsx';
import { figure } from '../../../src/lessons/handle-to-band/chain.figure.tsx';
import { handleToBand } from '../../../src/lessons/handle-to-band/model.ts';
import {
  partPath,
  ribbonParts,
  wholeWidth,
} from '../../../src/lessons/handle-to-band/ribbon-parts.ts';
import type { State } from '../../../src/lessons/handle-to-band/state.ts';
import { threadWord } from '../../../src/lessons/handle-to-band/thread-word.ts';
import { turnedMill, turnLayout } from '../../../src/lessons/handle-to-band/turn-layout.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

function state(inputs: Partial<InputsOf<typeof handleToBand>>, narrow = false): State {
  const values = evaluated(handleToBand, inputsAt(handleToBand, inputs, 'metric'));
  return { values, system: 'metric', narrow, idPrefix: 'test' };
}

const drawn = (now: State) => render(h(FigureBody<typeof handleToBand>, { figure, state: now }));

/** How far the level lines of a path run, forth and back, one after the other. */
const runs = (path: string) => [...path.matchAll(/h(-?[\d.]+)/g)].map(([, run]) => Number(run));

const MOST = { turns: 0.75, friction: handleToBand.inputs.friction.max, frameStiffness: 30e6 };
const STATES = [0.02, 0.5, 0.75].flatMap((turns) =>
  [false, true].map((narrow) => ({ turns, narrow })),
);

describe('the ribbon', () => {
  it.each(STATES)('has parts that add up to the whole at $turns turns', ({ turns, narrow }) => {
    const { ribbon } = turnLayout(narrow);
    const now = state({ turns }, narrow);
    const whole = wholeWidth(now, ribbon);
    const parts = ribbonParts(now).map((part) => runs(partPath(part, whole, ribbon)));
    const sum = (place: number) => parts.reduce((total, part) => total + (part[place] ?? 0), 0);
    expect(sum(0) / whole).toBeCloseTo(1, 9);
    expect(sum(2) / ribbon.width).toBeCloseTo(1, 9);
  });

  it.each([false, true])('grows with the work of the turns, as far as its place', (narrow) => {
    const { ribbon } = turnLayout(narrow);
    const [small, large] = [state({ turns: 0.2 }, narrow), state({ turns: 0.6 }, narrow)];
    const widths = wholeWidth(large, ribbon) / wholeWidth(small, ribbon);
    expect(widths).toBeCloseTo(large.values.work / small.values.work, 9);
    expect(wholeWidth(state(MOST, narrow), ribbon) / ribbon.width).toBeCloseTo(1, 12);
  });

  it.each(STATES)('has its parts one after the other at $turns turns', ({ turns }) => {
    const now = state({ turns });
    const [band, frame, heat] = ribbonParts(now);
    expect(band?.before).toBe(0);
    expect(frame?.before).toBeCloseTo(now.values.bandShare, 12);
    expect(1 - (heat?.before ?? 0)).toBeCloseTo(now.values.heatShare, 12);
  });

  it.each([false, true])('says each share', (narrow) => {
    const html = drawn(state({}, narrow));
    for (const text of ['>in the band 17\u202f%', '>frame 11\u202f%', '>heat 72\u202f%'])
      expect(html).toContain(text);
  });
});

describe('the guess', () => {
  const ends = (html: string, ink: string) =>
    [...html.matchAll(new RegExp(`<path[^>]*class="${ink}-line"[^>]*>`, 'g'))]
      .map(([path]) => path.match(/ d="M([\d.]+) [\d.]+v7M\1 [\d.]+H([\d.]+)M\2 [\d.]+v7"/))
      .filter((found) => found !== null)
      .map(([, from, to]) => [Number(from), Number(to)] as const);

  it.each([0, 0.166, 0.5, 1])('of %s is drawn on the scale of the truth', (guess) => {
    for (const narrow of [false, true]) {
      const now = state({}, narrow);
      const { left, width } = turnLayout(narrow).ribbon;
      const html = drawn({ ...now, guess });
      const [guessed, truth] = [ends(html, 'hand')[0], ends(html, 'steel')[0]];
      expect(guessed).toEqual([left, left + guess * width]);
      expect(truth?.[0]).toBe(left);
      expect(((truth?.[1] ?? 0) - left) / width).toBeCloseTo(now.values.bandShare, 12);
    }
  });

  it('is not drawn before it is made', () => expect(drawn(state({}))).not.toContain('guess'));
});

describe('before any turn', () => {
  it.each([false, true])('the ribbon is empty and says so', (narrow) => {
    const html = drawn(state({ turns: 0 }, narrow));
    expect(html).toContain('nothing to share');
    expect(html).not.toMatch(/>heat /);
  });
});

describe('the word for the thread', () => {
  it.each([
    [0.08, 'greased'],
    [0.11, 'oiled'],
    [0.15, 'oiled or dry'],
    [0.17, 'oiled or dry'],
    [0.25, 'dry'],
  ])('for a friction of %s is %s', (friction, word) => expect(threadWord(friction)).toBe(word));
});

describe('the mill', () => {
  it.each([false, true])(
    'moves wheel and plate by the core’s travel times the printed scale',
    (narrow) => {
      const now = state({ turns: 0.4, frameStiffness: 5e6 }, narrow);
      const layout = turnLayout(narrow);
      const { mill, wheel } = turnedMill(now, layout);
      const drawnMetre = mill.scale * mill.times;
      expect((wheel - mill.right) / drawnMetre).toBeCloseTo(now.values.wheelTravel, 12);
      for (const part of ['plate', 'handle'] as const) {
        const give = (layout.mill[part] - mill[part]) / drawnMetre;
        expect(give).toBeCloseTo(now.values.frameTravel, 12);
      }
      expect(figure.notes(now).join()).toContain(`× ${mill.times}`);
    },
  );

  it('has room between wheel and plate in every corner of the ranges', () => {
    for (const narrow of [false, true]) {
      for (const frameStiffness of [2e6, 8e6, 30e6]) {
        const now = state({ turns: 0.75, frameStiffness }, narrow);
        const { mill, wheel } = turnedMill(now, turnLayout(narrow));
        expect(wheel + mill.radius).toBeLessThan(mill.plate);
      }
    }
  });
});

describe('each stage', () => {
  it.each([
    [0, 1],
    [0.02, 2],
    [0.1, 6],
  ])('appears as the handle turns: at %s turns %s of them', (turns, count) => {
    expect(drawn(state({ turns })).match(/class="numeral"/g)).toHaveLength(count);
    expect(drawn(state({ turns }, true)).match(/class="numeral"/g)).toHaveLength(2 * count); // on the mill and in the list
  });

  it('says whether it can be measured, in the list of a phone', () => {
    const html = drawn(state({}, true));
    expect(html.match(/>by (?:wrench|dial)</g)).toHaveLength(2);
    expect(html.match(/>calculated</g)).toHaveLength(4);
  });

  it('says whether it can be measured, once all are on a wide sheet', () => {
    expect(drawn(state({}))).toContain('measure 1 by wrench and 6 by dial');
    expect(drawn(state({ turns: 0.06 }))).not.toContain('by wrench');
  });

  it.each([false, true])('stands on the drawing with its number', (narrow) => {
    const drawing = drawn(state({}, narrow)).match(/<svg.*<\/svg>/s)?.[0];
    for (const text of [
      '14.0\u202fN·m',
      '6510\u202fN',
      '3250\u202fN',
      '112\u202fMPa',
      '0.219\u202fmm',
    ]) {
      expect(drawing).toContain(text);
    }
  });
});
