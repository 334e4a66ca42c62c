/** What the figures of the lesson find and draw. */
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { figure as listen } from '../../../src/lessons/second-opinion/listen.figure.tsx';
import { secondOpinion as model } from '../../../src/lessons/second-opinion/model.ts';
import { figure as pluck } from '../../../src/lessons/second-opinion/pluck.figure.tsx';
import { figure as press } from '../../../src/lessons/second-opinion/press.figure.tsx';
import { figure as routes } from '../../../src/lessons/second-opinion/routes.figure.tsx';
import type { Figure, State } from '../../../src/lessons/second-opinion/state.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

type Inputs = Partial<InputsOf<typeof model>>;

const stateAt = (inputs: Inputs, more: Partial<State> = {}): State => ({
  values: evaluated(model, inputsAt(model, inputs, 'metric')),
  system: 'metric',
  narrow: false,
  idPrefix: 'x',
  ...more,
});
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');
const found = ({ finding }: Figure, inputs: Inputs) => plain(finding(stateAt(inputs)));
const drawn = ({ Drawing }: Figure, state: State) => plain(render(h(Drawing, state)));

describe('the pluck', () => {
  it('tells the note of both bands', () =>
    expect(found(pluck, { stress: 110e6, band: 'wide' })).toMatch(
      /^At 110 MPa, 550 mm of the wide band sounds at 10\d Hz, of the narrow band at 105 Hz\.$/,
    ));
  it('draws guess and truth once there is a guess', () => {
    expect(drawn(pluck, stateAt({}))).not.toContain('guess');
    const guessed = drawn(pluck, stateAt({}, { guess: 60 }));
    expect(guessed).toContain('your guess 60.0 Hz');
    expect(guessed).toContain('the truth 105 Hz');
  });
});

describe('the note', () => {
  it('means a stress with its interval', () =>
    expect(found(listen, {})).toBe('A note of 104.90 ± 0.50 Hz on 550 mm means 109.6 ± 6.6 MPa.'));
  it('means none where it is too low for the span', () => {
    expect(found(listen, { span: 0.2, note: 40 })).toMatch(
      /is too low\. Below \d+ Hz, 200 mm of band/,
    );
    expect(drawn(listen, stateAt({ span: 0.2, note: 40 }))).toContain('too low for this span');
  });
  it('is off the plot where its stress is, with its number', () =>
    expect(drawn(listen, stateAt({ span: 1, note: 300 }))).toMatch(/\d+ MPa, off the plot/));
});

describe('the press', () => {
  it('tells the stress, and warns of a weight that is too heavy', () => {
    expect(found(press, {})).toBe('5.00 kg moves the strand 5.1 mm: it carries 108.8 ± 3.7 MPa.');
    expect(found(press, { deflection: 0.009 })).toMatch(
      /too far to tell the stress\. Take less weight\.$/,
    );
  });
});

describe('the routes', () => {
  it.each([
    [
      'nothing',
      /^All three agree: dial 107 ± 20 MPa, note 109\.6 ± 6\.6 MPa, weight 108\.8 ± 3\.7 MPa\.$/,
    ],
    ['section', /^With the section taken too large, 1 of 3 pairs disagrees: note and weight\.$/],
    ['zero', /2 of 3 pairs disagree: dial and note; dial and weight\.$/],
  ] as const)('with %s find %s', (mistake, finding) =>
    expect(found(routes, { mistake })).toMatch(finding),
  );
  it('show what is off the scale as an arrow with its number', () =>
    expect(drawn(routes, stateAt({ mistake: 'harmonic' }))).toContain(
      '457 ± 17 MPa, off the scale',
    ));
});
