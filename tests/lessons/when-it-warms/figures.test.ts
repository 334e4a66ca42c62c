/** What the figures of the lesson find and draw. */
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { figure as checks } from '../../../src/lessons/when-it-warms/checks.figure.tsx';
import { figure as day } from '../../../src/lessons/when-it-warms/day.figure.tsx';
import { figure as loop } from '../../../src/lessons/when-it-warms/loop.figure.tsx';
import { whenItWarms as model } from '../../../src/lessons/when-it-warms/model.ts';
import type { Figure, State } from '../../../src/lessons/when-it-warms/state.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

type Inputs = Partial<InputsOf<typeof model>>;

const stateAt = (inputs: Inputs, more: Partial<State> = {}): State => ({
  values: evaluated(model, inputsAt(model, inputs, more.system ?? 'metric')),
  system: 'metric',
  narrow: false,
  idPrefix: 'x',
  ...more,
});
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');
const found = ({ finding }: Figure, inputs: Inputs, more: Partial<State> = {}) =>
  plain(finding(stateAt(inputs, more)));
const drawn = ({ Drawing }: Figure, inputs: Inputs, more: Partial<State> = {}) =>
  plain(render(h(Drawing, stateAt(inputs, more))));

describe('the day', () => {
  it('tells the first hour and lunch', () => {
    expect(found(day, {})).toBe(
      'The first hour takes 21 MPa, 19 %; at lunch it is 15 MPa below the setting.',
    );
    expect(found(day, {}, { system: 'us' })).toMatch(
      /takes 3000 psi, 19 %; .* psi below the setting\.$/,
    );
  });
  it('tells a band that stays cold, and one that a warm mill tightens', () =>
    expect(found(day, { bandWarm: 0 })).toMatch(
      /^The first hour takes nothing of 110 MPa; at lunch it is .* MPa above the setting\.$/,
    ));
  it('tells where lunch finds it as it was set', () =>
    expect(found(day, { bandWarm: 0, frameWarm: 0, wheelsWarm: 0 })).toMatch(
      /it is as it was set\.$/,
    ));
  it('draws guess and truth on the scale of the first strip, once there is a guess', () => {
    expect(drawn(day, {})).not.toContain('guess');
    const guessed = drawn(day, {}, { guess: 0.3 });
    expect(guessed).toContain('your guess −30 %');
    expect(guessed).toContain('the truth −19 %');
  });
  it('keeps the truth where it was asked, whatever is dragged', () =>
    expect(drawn(day, { bandWarm: 30 }, { guess: 0.3 })).toContain('the truth −19 %'));
  it.each([0.15, 0.19, 0.2, 0.24])('keeps guess and truth apart at %d', (guess) => {
    const texts = drawn(day, {}, { guess, narrow: true });
    const level = (word: string) => Number(texts.match(new RegExp(`y="([^"]*)">${word}`))?.[1]);
    expect(Math.abs(level('guess') - level('truth'))).toBeGreaterThanOrEqual(13.9);
  });
  it('has three grips, each on its curve', () =>
    expect([...drawn(day, {}).matchAll(/data-input="(\w+)"/g)].map(([, input]) => input)).toEqual([
      'frameWarm',
      'wheelsWarm',
      'bandWarm',
    ]));
});

describe('the loop', () => {
  it('tells who gains on whom', () => {
    expect(found(loop, {})).toBe(
      'The band outgrows frame and wheels by 0.249 mm at the wheel: it loses 14 MPa.',
    );
    expect(found(loop, { bandNow: -10 })).toMatch(
      /^The band is 0\.374 mm too short .* gains 21 MPa/,
    );
  });
  it.each([-20, 0, 30])('tells that nothing changes if all are at %d', (warmth) =>
    expect(found(loop, { bandNow: warmth, frameNow: warmth, wheelsNow: warmth })).toBe(
      'Everything grows in step: the tension stays at 110 MPa.',
    ),
  );
  it('prints how many times larger growth is drawn', () =>
    expect(loop.notes(stateAt({})).join()).toContain('× 200'));
  it('reaches no further than the account has room for', () => {
    const texts = drawn(loop, { bandNow: 30, frameNow: -20, wheelsNow: -20 }, { narrow: true });
    const bars = [
      ...texts.matchAll(
        /<rect class="(?:steel|ink)-fill" x="([\d.-]+)" y="[^"]*" width="([\d.]+)"/g,
      ),
    ];
    expect(bars).toHaveLength(4);
    for (const [, x, width] of bars) expect(Number(x) + Number(width)).toBeLessThanOrEqual(360);
  });
});

describe('the checks', () => {
  it('tell what a warm check should show, and what tightening then does', () =>
    expect(found(checks, {})).toBe(
      '110 MPa cold is 89.0 MPa warm. Tighten it then, and it is 131 MPa once cold.',
    ));
  it('tell a mill that has cooled', () =>
    expect(found(checks, { warmer: -10 })).toBe(
      'A setting of 110 MPa shows 124 MPa once the band is colder.',
    ));
  it('tell that nothing changes under constant pressure, or at the same warmth', () => {
    const same = 'Cold or warm, the check shows 110 MPa.';
    expect(found(checks, { tensioner: 'oil' })).toBe(same);
    expect(found(checks, { warmer: 0 })).toBe(same);
  });
  it('say what holds the wheel, and that makers’ limits come first', () => {
    const notes = checks.notes(stateAt({ tensioner: 'spring' })).join();
    expect(notes).toContain('a spring between screw and frame');
    expect(notes).toContain('makers’ limits come first');
  });
});
