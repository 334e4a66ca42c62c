/** What the figures of the lesson find and draw. */
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { layersOf, toneOf } from '../../../src/lessons/round-the-wheel/bend/layers.ts';
import { truth } from '../../../src/lessons/round-the-wheel/bend/TimesRule.tsx';
import { figure as bend } from '../../../src/lessons/round-the-wheel/bend.figure.tsx';
import { figure as lap } from '../../../src/lessons/round-the-wheel/lap.figure.tsx';
import { figure as life } from '../../../src/lessons/round-the-wheel/life.figure.tsx';
import { asked, roundTheWheel as model } from '../../../src/lessons/round-the-wheel/model.ts';
import type { Figure, State } from '../../../src/lessons/round-the-wheel/state.ts';
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

describe('the bend', () => {
  it('is told beside the tension', () =>
    expect(found(bend, asked)).toBe(
      'The wheel adds 393 MPa of bending to 110 MPa of tension: 3.6 times as much.',
    ));

  it('is nothing over an endless wheel, which has no center to drag', () => {
    expect(found(bend, { over: 'endless' })).toBe(
      'Over an endless wheel nothing bends: 80.0 MPa all through the band.',
    );
    const drawing = drawn(bend, stateAt({ over: 'endless' }));
    expect(drawing).toContain('no bend');
    expect(drawing).not.toContain('data-input="wheelDiameter"');
  });

  it('is drawn beside the guess once there is one, on one scale', () => {
    expect(drawn(bend, stateAt({}))).not.toContain('guess');
    const guessed = drawn(bend, stateAt({}, { guess: 1.5 }));
    expect(guessed).toContain('guess 1.5 times');
    expect(guessed).toContain('truth 3.6 times');
    expect(truth('metric')).toBe(evaluated(model, inputsAt(model, asked, 'metric')).bendTimes);
  });

  it('adds at the outer face what it takes from the inner', () => {
    const text = drawn(bend, stateAt(asked)).replaceAll(/<[^>]*>/g, '');
    expect(text).toContain('outer face: 110 MPa + 393 MPa = 503 MPa');
    expect(text).toContain('inner face: 110 MPa − 393 MPa = −283 MPa');
  });

  it('is darker the more the steel is pulled, from face to face, in even steps', () => {
    const step = (tone: string) => Number(tone.replace('field-', ''));
    const steps = layersOf(stateAt(asked).values).map(({ tone }) => step(tone));
    expect(steps).toEqual(steps.toSorted((one, other) => one - other));
    expect(
      new Set(layersOf(stateAt({ over: 'endless' }).values).map(({ tone }) => tone)).size,
    ).toBe(1);
    const middles = [1, 2, 3, 4, 5, 6, 7, 8].map((place) => -700e6 + ((place - 0.5) / 8) * 1660e6);
    expect(middles.map((stress) => step(toneOf(stress)))).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });
});

describe('the lap', () => {
  it('tells how often, how high, and against which yield', () =>
    expect(found(lap, asked)).toBe(
      '39 800 times an hour the outer face is pulled to about 532 MPa, 48 % of the least yield.',
    ));

  it('tells of rest and of slip', () => {
    expect(found(lap, { speed: 0 })).toMatch(
      /^At rest .* 45 % of the least yield, without a swing\.$/,
    );
    expect(found(lap, { speed: 1, power: 15e3 })).toMatch(/^The driving wheel would slip/);
    expect(lap.notes(stateAt({ speed: 0 }))[0]).toMatch(/^speed adds 0/);
  });

  it('moves its dot on the mill and on the line together', () => {
    const places = (place: number) =>
      [...drawn(lap, stateAt({ place })).matchAll(/<circle class="steel-fill"/g)].length;
    expect(places(0.4)).toBe(2);
    expect(drawn(lap, stateAt({ place: 0.1 }))).not.toBe(drawn(lap, stateAt({ place: 0.2 })));
    expect(drawn(lap, stateAt({ place: 0.4 }))).toContain('here 489 MPa');
  });
});

describe('what costs life', () => {
  it('is told as ratios to today', () => {
    expect(found(life, { change: 0.1 })).toBe(
      'Thickness +10 %: life 47 % of today’s. Tension +10 %: 93 % of today’s.',
    );
    expect(found(life, { change: -0.1 })).toMatch(
      /life 2\.3 times today’s\. Tension −10 %: 1\.1 times/,
    );
    expect(found(life, { change: 0 })).toMatch(/^At 0 % change, life is as today/);
  });

  it('names its assumption and promises nothing', () => {
    const [assumed] = life.notes(stateAt({ exponent: 7 }));
    expect(assumed).toMatch(/power 7 \(6 to 12 are as likely\): ratios only, no promise/);
  });

  it('says what each thing is and would be', () => {
    const drawing = drawn(life, stateAt({ change: 0.1 }));
    for (const sizes of ['1.00 mm to 1.10 mm', '80.0 MPa to 88.0 MPa', '520 mm to 572 mm'])
      expect(drawing).toContain(sizes);
  });

  it('draws all three bars from today’s life on one scale, thickness far beyond tension', () => {
    const widths = [
      ...drawn(life, stateAt({ change: 0.1 })).matchAll(
        /<rect class="steel-fill"[^>]* width="([\d.]+)"/g,
      ),
    ].map(([, width]) => Number(width));
    expect(widths).toHaveLength(3);
    expect((widths[0] ?? 0) / (widths[1] ?? 1)).toBeGreaterThan(5);
  });
});
