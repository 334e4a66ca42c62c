import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { whereIsZero as model } from '../../../src/lessons/where-is-zero/model.ts';
import { figure as repeats } from '../../../src/lessons/where-is-zero/repeats.figure.tsx';
import { figure as series } from '../../../src/lessons/where-is-zero/series.figure.tsx';
import type { Figure, State } from '../../../src/lessons/where-is-zero/state.ts';
import { figure as straightening } from '../../../src/lessons/where-is-zero/straightening.figure.tsx';
import { errorText } from '../../../src/lessons/where-is-zero/wrong/ZerosTable.tsx';
import { figure as wrongZeros } from '../../../src/lessons/where-is-zero/wrong-zeros.figure.tsx';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

type Inputs = Partial<InputsOf<typeof model>>;

function stateAt(inputs: Inputs, guess?: number): State {
  const values = evaluated(model, inputsAt(model, inputs, 'metric'));
  return { values, system: 'metric', narrow: false, idPrefix: 'x', guess };
}

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');
const found = (figure: Figure, inputs: Inputs = {}) => plain(figure.finding(stateAt(inputs)));
const drawn = (figure: Figure, inputs: Inputs = {}, guess?: number) =>
  plain(render(h(figure.Drawing, stateAt(inputs, guess))));

describe('the band that straightens', () => {
  it('says what the dial shows beside what the band has stretched', () => {
    expect(found(straightening, { load: 0.8 })).toMatch(/still slack/);
    expect(found(straightening, { load: 15 })).toBe(
      'At 15.0 N·m the dial has moved 0.460 mm, but the band has stretched 0.236 mm.',
    );
    expect(found(straightening, { load: 3, side: 'outer' })).toMatch(
      /gone backwards, to −0\.\d+ mm/,
    );
  });
  it('shows guess and truth only after the guess, on one scale', () => {
    expect(drawn(straightening)).not.toMatch(/guess|truth/);
    const html = drawn(straightening, {}, 0.118e-3); // half of the truth, 0.236 mm
    expect(html).toMatch(/= dial.*guess at 15\.0 N·m.*truth at 15\.0 N·m/); // not at the torque of the rows above
    const widths = [...html.matchAll(/<rect class="(?:hand|steel)-line[^>]*width="([\d.]+)"/g)];
    const [, guess, truth] = widths.map(([, width]) => Number(width));
    expect((truth as number) / (guess as number)).toBeCloseTo(2, 1);
  });
});

describe('the wrong zeros', () => {
  it('name each with its sign', () => {
    expect(found(wrongZeros, { setAt: 6 })).toBe(
      'Set to zero on the slack band, the dial reads 115 MPa too high. Set at 6.00 N·m, it reads 43.9 MPa too low.',
    );
    expect(found(wrongZeros, { side: 'outer' })).toMatch(/^[^.]*115 MPa too low\. .* too low\.$/);
  });
  it('are drawn with the true one beside them', () =>
    expect(drawn(wrongZeros)).toMatch(/set on the slack band.*the true zero.*right.*set at/));
});

describe('a zero that happens to be right', () => {
  it('is called so', () => {
    const text = plain(errorText(0.01e6, stateAt({})));
    expect([text, plain(errorText(-1e6, stateAt({})))]).toEqual(['right', '1.00 MPa too low']);
  });
});

describe('the series', () => {
  it('shows no more than the reader’s own zero while he places it by eye', () => {
    expect(drawn(series)).not.toMatch(/classroom rule|all readings|the truth/);
    expect(found(series)).not.toMatch(/truth/);
  });
  it('sets zeros beside each other once there are two', () => {
    const beside = (inputs: Inputs) => drawn(series, inputs).match(/r="5"/g)?.length;
    expect([beside({}), beside({ way: 'classroom' })]).toEqual([1, 4]); // in the table, and beside the plot
  });
  it('compares it with the classroom rule, then with the truth', () => {
    expect(found(series, { way: 'classroom' })).toMatch(
      /classroom rule puts zero at .* ± .* below it/,
    );
    expect(found(series, { way: 'full', eyeZero: 0.1e-3 })).toBe(
      'Series 1: your zero is 0.035 mm above the truth, so your stress is 17.9 MPa too low.',
    );
    expect(found(series, { way: 'full' })).toMatch(
      /below the truth, so your stress is .* too high/,
    );
  });
  it('says so where the reader’s zero is the true one', () =>
    expect(found(series, { way: 'full', eyeZero: 0.065e-3 })).toBe(
      'Series 1: your zero, 0.065 mm, is the true one.',
    ));
  it('says which readings the line leaves out, and why', () => {
    const [note] = series.notes(stateAt({ way: 'full' })).map(plain);
    expect(note).toMatch(
      /^hollow: still straightening, by 0\.\d+ mm, .*; the dial repeats to 0.005 mm$/,
    );
    const hollow = drawn(series, { way: 'full' }).match(/class="thin paper-fill"/g);
    expect(hollow).toHaveLength(2);
    expect(drawn(series, { way: 'classroom' }).match(/class="thin paper-fill"/g)).toHaveLength(5);
  });
});

describe('the repeats', () => {
  it('compare the chosen way with all readings', () => {
    expect(found(repeats)).toMatch(
      /^In 300 simulated series .* with a ruler on the graph, and 0\.\d+ mm from all/,
    );
    expect(found(repeats, { rule: 'needle' })).toMatch(/if you watch the hand/);
  });
  it('give no interval to the eye', () => {
    expect(drawn(repeats)).toMatch(/gives no interval.*interval holds the truth/);
    expect(drawn(repeats, { rule: 'classroom' })).not.toMatch(/gives no interval/);
  });
});
