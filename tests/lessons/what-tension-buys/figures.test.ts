/** What the figures of the lesson find and draw, also at the ends of their sliders. */
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { figure as grip } from '../../../src/lessons/what-tension-buys/grip.figure.tsx';
import { figure as hold } from '../../../src/lessons/what-tension-buys/hold.figure.tsx';
import { whatTensionBuys as model } from '../../../src/lessons/what-tension-buys/model.ts';
import { figure as push } from '../../../src/lessons/what-tension-buys/push.figure.tsx';
import type { Figure, State } from '../../../src/lessons/what-tension-buys/state.ts';
import { figure as frame } from '../../../src/lessons/what-tension-buys/window.figure.tsx';
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
const found = ({ finding }: Figure, inputs: Inputs) => plain(finding(stateAt(inputs)));
const drawn = ({ Drawing }: Figure, state: State) => plain(render(h(Drawing, state)));

describe('the push', () => {
  it('weighs tension against guides', () =>
    expect(found(push, {})).toBe(
      'Twice the tension takes 31 % off the teeth’s movement; half the guide spacing, 51 %.',
    ));

  it('letters three tensions, the share of the twist, and how far the teeth move at both spacings', () => {
    const html = drawn(push, stateAt({}));
    for (const text of ['your 110 MPa', 'half: 55.0 MPa', 'a quarter: 27.5 MPa', '60 % twist'])
      expect(html).toContain(text);
    for (const text of ['3.0 mm', '1.5 mm', '6.6 mm', '275 mm apart']) expect(html).toContain(text);
  });

  it('says how many times larger the wander is drawn, and that it is a push on a standing band', () => {
    const notes = push.notes(stateAt({})).map(plain).join();
    expect(notes).toContain('wander × 4 beside a board of 25 mm');
    expect(notes).toContain('a push on a standing band');
  });

  it('draws the wander as high as the teeth, beside the board’s knot', () => {
    const html = drawn(push, stateAt({}));
    const crest = 88 - 4000 * evaluated(model, inputsAt(model, {}, 'metric')).teeth;
    expect(html).toContain(`${crest}S`); // of the face
    expect(html).toContain(`M186 ${crest}H`); // of the line that carries the level across
  });

  it('draws guess and truth once there is a guess', () => {
    expect(drawn(push, stateAt({}))).not.toContain('guess');
    const guessed = drawn(push, stateAt({}, { guess: 0.0027 }));
    expect(guessed).toContain('your guess 2.7 mm');
    expect(guessed).toContain('the truth 3.7 mm');
  });
});

describe('the hold', () => {
  it('compares the spacing that is tried with the reader’s own', () =>
    expect(found(hold, {})).toBe(
      'With guides 1.35 m apart, the span holds its teeth with 4.0 N/mm; at your 550 mm, with 10 N/mm.',
    ));
  it('says which spacings no mill has', () =>
    expect(hold.notes(stateAt({})).map(plain).join()).toContain('the free strand at Ottersleigh'));
  it('draws the point where the curve is, and the grip under it', () => {
    const html = drawn(hold, stateAt({ far: 5 }));
    expect(html).toContain('cx="460"');
    expect(html).toContain('translate(460 326)');
  });
});

describe('the grip', () => {
  it('tells how much of what the rim carries the cut takes', () =>
    expect(found(grip, {})).toBe(
      'At 110 MPa the rim carries 56 kW before the band slips; the cut takes 9.0 kW, 16 % of that.',
    ));
  it('tells that both strands pull alike with no power', () =>
    expect(found(grip, { power: 0 })).toMatch(/^With no power in the cut both strands pull alike/));
  it('tells that the band slips where the rim carries less than the cut takes', () => {
    const slipping = { stress: 60e6, friction: 0.1, power: 30e3 };
    expect(found(grip, slipping)).toMatch(/^At 60\.0 MPa the band slips: the cut takes 30 kW/);
    expect(drawn(grip, stateAt(slipping))).toContain('slips at 30 kW');
  });
  it('names the power of a line that leaves the plot, at an arrow', () => {
    const arrows = (inputs: Inputs) =>
      drawn(grip, stateAt(inputs)).match(/class="ink-fill"/g) ?? [];
    expect(arrows({})).toHaveLength(0);
    expect(arrows({ stress: 160e6, friction: 0.4 })).toHaveLength(1);
    expect(drawn(grip, stateAt({ stress: 160e6, friction: 0.4 }))).toContain('120 kW');
  });
});

describe('the window', () => {
  it('names its edges and what binds', () =>
    expect(found(frame, {})).toBe(
      'The window is 64 to 137 MPa: straightness sets the low edge, life the high one.',
    ));
  it('says on which side a tension is out of it, and why', () => {
    expect(found(frame, { stress: 60e6 })).toMatch(
      /^60\.0 MPa is below the window, .*: the push moves the teeth too far\.$/,
    );
    expect(found(frame, { millLimit: 6000 })).toMatch(
      /^110 MPa is above the window, .*: the mill’s maker allows less\.$/,
    );
  });
  it('says that none fits where it is shut, with both edges', () => {
    expect(found(frame, { span: 0.9 })).toMatch(
      /^No tension fits: straightness asks for \d+ MPa or more, life allows 137 MPa at most\.$/,
    );
    expect(drawn(frame, stateAt({ span: 0.9 }))).toContain('no window: the edges cross');
  });
  it('draws the edges that bind heavy, and only those', () =>
    expect(drawn(frame, stateAt({})).match(/class="limit"/g)).toHaveLength(2));
  it('names the exponent as assumed, and promises no hours', () =>
    expect(frame.notes(stateAt({})).map(plain).join()).toContain(
      'by an assumed exponent; no promise of hours',
    ));
});
