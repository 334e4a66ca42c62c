/** What the drawing of the chain promises: widths that add up, travel that is the core's own, numbers that stand on it. */
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { FigureBody } from '../../../src/figures/FigureBody.tsx';
import { figure } from '../../../src/lessons/handle-to-band/chain.figure.tsx';
import { handleToBand } from '../../../src/lessons/handle-to-band/model.ts';
import { ribbonParts, wholeWidth } from '../../../src/lessons/handle-to-band/ribbon-parts.ts';
import type { State } from '../../../src/lessons/handle-to-band/state.ts';
import { threadWord } from '../../../src/lessons/handle-to-band/TurnNames.tsx';
import { turnLayout, turnPlaces } from '../../../src/lessons/handle-to-band/turn-layout.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

function state(inputs: Partial<InputsOf<typeof handleToBand>>, narrow = false): State {
  const values = evaluated(handleToBand, inputsAt(handleToBand, inputs, 'metric'));
  return { values, system: 'metric', narrow, idPrefix: 'test' };
}

const STATES = [0.02, 0.5, 0.75].flatMap((turns) =>
  [false, true].map((narrow) => ({ turns, narrow })),
);

describe('the ribbon', () => {
  it.each(STATES)('has widths that add up to the whole at $turns turns', ({ turns, narrow }) => {
    const layout = turnLayout(narrow);
    const now = state({ turns }, narrow);
    const parts = ribbonParts(now, layout);
    const sum = parts.reduce((total, { thickness }) => total + thickness, 0);
    expect(sum / wholeWidth(now, layout)).toBeCloseTo(1, 9);
  });

  it.each([false, true])('grows with the work of the turns', (narrow) => {
    const layout = turnLayout(narrow);
    const [small, large] = [state({ turns: 0.2 }, narrow), state({ turns: 0.6 }, narrow)];
    const widths = wholeWidth(large, layout) / wholeWidth(small, layout);
    expect(widths).toBeCloseTo(large.values.work / small.values.work, 9);
    const most = state(
      { turns: 0.75, friction: handleToBand.inputs.friction.max, frameStiffness: 30e6 },
      narrow,
    );
    expect(wholeWidth(most, layout)).toBeGreaterThan(0);
    expect(wholeWidth(most, layout) / layout.ribbon.whole).toBeLessThanOrEqual(1 + 1e-12);
  });

  it.each(STATES)('keeps its parts apart at $turns turns', ({ turns, narrow }) => {
    const parts = ribbonParts(state({ turns }, narrow), turnLayout(narrow));
    for (const [place, { end }] of parts.entries()) {
      const above = parts[place - 1];
      if (above) expect(end).toBeGreaterThan(above.end + above.thickness);
    }
  });
});

describe('before any turn', () => {
  it.each([false, true])('the ribbon is empty and says so', (narrow) => {
    const html = render(
      h(FigureBody<typeof handleToBand>, { figure, state: state({ turns: 0 }, narrow) }),
    );
    expect(html).toContain('nothing to share');
    expect(html).not.toContain('heat at no load');
  });
});

describe('the numbers of the ribbon', () => {
  it.each([0.02, 0.3, 0.75])('have two decimals each at %s turns', (turns) => {
    const html = render(h(FigureBody<typeof handleToBand>, { figure, state: state({ turns }) }));
    const numbers = [...html.matchAll(/(?:kept in|heat (?:in|at)) (?:no )?\w+ ([\d.]+)/g)];
    expect(numbers).toHaveLength(5);
    for (const [, number] of numbers) expect(number).toMatch(/^\d+\.\d\d$/);
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
      const { wheel, wheelAtRest, plate } = turnPlaces(now, layout);
      const drawn = layout.scale * layout.times;
      expect((wheel - wheelAtRest) / drawn).toBeCloseTo(now.values.wheelTravel, 12);
      expect((layout.plate - plate) / drawn).toBeCloseTo(now.values.frameTravel, 12);
      expect(figure.notes(now).join()).toContain(`× ${layout.times}`);
    },
  );

  it('has room between wheel and plate in every corner of the ranges', () => {
    for (const narrow of [false, true]) {
      for (const frameStiffness of [2e6, 8e6, 30e6]) {
        const { wheel, radius, plate } = turnPlaces(
          state({ turns: 0.75, frameStiffness }, narrow),
          turnLayout(narrow),
        );
        expect(wheel + radius).toBeLessThan(plate);
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
    const html = render(h(FigureBody<typeof handleToBand>, { figure, state: state({ turns }) }));
    expect(html.match(/you can (?:measure this|only infer it)/g)).toHaveLength(count);
  });

  it.each([false, true])('says whether it can be measured', (narrow) => {
    const html = render(h(FigureBody<typeof handleToBand>, { figure, state: state({}, narrow) }));
    expect(html.match(/you can measure this/g)).toHaveLength(2);
    expect(html.match(/you can only infer it/g)).toHaveLength(4);
  });

  it.each([false, true])('stands on the drawing with its number', (narrow) => {
    const html = render(h(FigureBody<typeof handleToBand>, { figure, state: state({}, narrow) }));
    for (const text of [
      '14.0\u202fN·m',
      '6507\u202fN',
      '3253\u202fN',
      '112\u202fMPa',
      '0.219\u202fmm',
    ]) {
      expect(html).toContain(text);
    }
  });
});
