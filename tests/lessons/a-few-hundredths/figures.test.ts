/** What the three figures find, say and draw. */
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { figure as budget } from '../../../src/lessons/a-few-hundredths/budget.figure.tsx';
import { aFewHundredths as model } from '../../../src/lessons/a-few-hundredths/model.ts';
import { pictureOf } from '../../../src/lessons/a-few-hundredths/reading/picture.ts';
import { figure as reading } from '../../../src/lessons/a-few-hundredths/reading.figure.tsx';
import { figure as rig } from '../../../src/lessons/a-few-hundredths/rig.figure.tsx';
import type { Figure, State } from '../../../src/lessons/a-few-hundredths/state.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

type Drawn = Partial<InputsOf<typeof model>> & Partial<Pick<State, 'system' | 'narrow' | 'guess'>>;

function stateAt({ system = 'metric', narrow = false, guess, ...inputs }: Drawn): State {
  const values = evaluated(model, inputsAt(model, inputs, system));
  return { values, system, narrow, idPrefix: 'x', guess };
}

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');
const found = ({ finding }: Figure, drawn: Drawn = {}) => plain(finding(stateAt(drawn)));
const html = ({ Drawing }: Figure, drawn: Drawn = {}) => plain(render(h(Drawing, stateAt(drawn))));
const turnsOfHands = (drawing: string, tone: string) =>
  [...drawing.matchAll(new RegExp(`class="${tone}" d="M0 -[^>]*rotate\\(([-\\d.]+)\\)`, 'g'))].map(
    ([, degrees]) => Number(degrees).toFixed(2),
  );

describe('the dial', () => {
  it('turns its hands exactly as far as the picture says, on a phone and wide', () => {
    for (const picture of [1, 2, 7, 19, 400])
      for (const narrow of [false, true]) {
        const drawing = html(reading, { picture, narrow });
        const { before, now } = pictureOf(picture);
        expect(turnsOfHands(drawing, 'steel-fill')).toEqual([
          (3.6 * now).toFixed(2),
          (0.36 * now).toFixed(2),
        ]);
        expect(turnsOfHands(drawing, 'thin paper-fill')).toEqual([
          (3.6 * before).toFixed(2),
          (0.36 * before).toFixed(2),
        ]);
      }
  });

  it('shows one look where one is asked for', () => {
    const drawing = html(reading, { look: 'one' });
    expect(turnsOfHands(drawing, 'thin paper-fill')).toEqual([]);
    expect(turnsOfHands(drawing, 'steel-fill')).toHaveLength(2);
    expect(drawing).not.toContain('before');
  });

  it('has a hundred marks, numbered by tens', () => {
    const drawing = html(reading, { look: 'one' });
    const strokes = [...drawing.matchAll(/d="(M[^"]*L[^"]*)"/g)].map(
      ([, d = '']) => d.split('M').length - 1,
    );
    expect(strokes.filter((count) => count >= 10)).toEqual([10, 10, 80, 10]);
    for (const number of [0, 10, 50, 90]) expect(drawing).toContain(`>${number}</text>`);
  });

  it('never tells the reading: not in the finding, the notes or the words for who cannot see it', () => {
    for (let picture = 2; picture < 80; picture += 1)
      for (const look of ['one', 'two'] as const) {
        const state = stateAt({ picture, look });
        const told = [
          reading.finding(state),
          reading.description(state),
          ...reading.notes(state),
        ].join();
        const { moved, shownNow, shownBefore } = state.values;
        for (const secret of [moved, shownNow, shownBefore])
          expect(told).not.toContain((1e3 * secret).toFixed(2));
      }
  });

  it('says where the hands are, so that it can be read without being seen', () =>
    expect(reading.description(stateAt({}))).toContain(
      'Before, the big hand is 6 marks clockwise of 0, the small hand just past 6. Now, the big hand is 4 marks clockwise of 90, the small hand just short of 6. Between the two the hand ran backwards.',
    ));

  it('marks guess and truth on the picture that was guessed about, and on no other', () => {
    expect(html(reading, { guess: 0.88e-3 })).toMatch(/your guess 0.880 mm.*the truth 0.120 mm/);
    expect(html(reading, { guess: 0.88e-3, picture: 2 })).not.toMatch(/guess|truth/);
    expect(html(reading, { guess: 0.88e-3, look: 'one' })).not.toMatch(/guess|truth/);
    expect(html(reading, { guess: 0.3e-3, system: 'us' })).toContain('the truth 0.0120 in');
    expect(html(reading)).toMatch(/one mark 0.01 mm.*one turn 1 mm/);
  });
});

describe('the rig', () => {
  it.each([
    [{}, 'With a bar askew by 3° the dial reads 0.392 MPa too little.'],
    [
      { fault: 'hand' },
      'With a steel bar, 3 °C warmer than the band, the dial reads 7.07 MPa too little.',
    ],
    [
      { fault: 'sun', bar: 'wood' },
      'With a wooden bar, 3 °C warmer like the band, the dial reads 4.61 MPa too much.',
    ],
    [
      { fault: 'sun' },
      'With a steel bar, 3 °C warmer like the band, the dial reads right: 110 MPa.',
    ],
  ] as const)('at %j finds: %s', (inputs, says) => expect(found(rig, inputs)).toBe(says));

  it('turns the whole gauge by the angle, and only then', () => {
    expect(html(rig)).toMatch(/<g transform="rotate\(3\.000 /);
    expect(html(rig, { fault: 'slip' })).toMatch(/<g transform="rotate\(0\.000 /);
  });
});

describe('the budget', () => {
  it('says what is left, and what most of it is', () => {
    expect(found(budget)).toMatch(
      /^One series on 400 mm: ± 16\.\d MPa, mostly from the scatter\.$/,
    );
    expect(found(budget, { barLength: 0.8, change: 'threeSeries' })).toMatch(
      /^Three series on 800 mm: ± [67]/,
    );
  });

  it('draws where it began only once something is changed', () => {
    expect(html(budget)).not.toContain('hidden-edge');
    expect(html(budget, { system: 'us' })).not.toContain('hidden-edge');
    expect(html(budget, { change: 'finerDial' })).toContain('hidden-edge');
  });

  it('keeps the largest on top', () => {
    const drawing = html(budget, { barLength: 0.8, change: 'threeSeries' });
    const lines = [
      ...drawing.matchAll(/translate\(0 (\d+)\)"><text[^>]*>[^<]*<\/text><text[^>]*>± ([\d.]+)/g),
    ]
      .map(([, y, size]) => [Number(y), Number(size)] as const)
      .sort(([one], [other]) => one - other);
    const sizes = lines.map(([, size]) => size);
    expect(sizes).toHaveLength(7);
    expect(sizes).toEqual([...sizes].sort((one, other) => other - one));
  });
});
