import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { models } from '../../src/lessons/all.ts';
import { stiffSpring } from '../../src/lessons/stiff-spring/model.ts';
import { linkFragment, readLink } from '../../src/live/link.ts';
import { clamped, defaults, isChoice, type Model } from '../../src/models/define-model.ts';
import { evenly } from '../evenly.ts';

const model: Model = stiffSpring;
const start = defaults(stiffSpring);

describe('the link of a lesson', () => {
  it('is empty while nothing differs from the lesson', () =>
    expect(linkFragment(stiffSpring, start)).toBe(''));
  it('holds the version, then only what differs, readable and in SI', () =>
    expect(linkFragment(stiffSpring, { ...start, stretch: 0.00025 })).toBe('v=1&stretch=0.00025'));
  it('of a page that starts at inputs of its own is empty there, and elsewhere names those too', () => {
    const own = { stretch: 0.0002 };
    expect(linkFragment(stiffSpring, { ...start, ...own }, own)).toBe('');
    expect(linkFragment(stiffSpring, { ...start, ...own, gaugeLength: 0.4 }, own)).toBe(
      'v=1&stretch=0.0002&gaugeLength=0.4',
    );
    expect(linkFragment(stiffSpring, start, own)).toBe('v=1&stretch=0.0001');
  });
  it('comes back as it was sent', () =>
    fc.assert(
      fc.property(evenly(0, 0.0024), evenly(0.2, 0.9), (stretch, gaugeLength) => {
        const sent = { ...start, stretch, gaugeLength };
        const { inputs, refused } = readLink(stiffSpring, `#${linkFragment(stiffSpring, sent)}`);
        const read = { ...start, ...inputs };
        expect(refused).toEqual([]);
        expect(read['stretch']).toBeCloseTo(stretch, 10);
        expect(read['gaugeLength']).toBeCloseTo(gaugeLength, 7);
      }),
    ));
  it('never throws, and gives only inputs of the model within their ranges', () => {
    const names = [...Object.keys(stiffSpring.inputs), 'v', 'constructor', '', '%00'];
    const hostile = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.double().map(String),
      fc.constant('0.3'),
    );
    const pairs = fc.array(fc.tuple(fc.constantFrom(...names), hostile), { minLength: 1 });
    let taken = 0;
    fc.assert(
      fc.property(pairs, (given) => {
        const fragment = given.map(([name, text]) => `${name}=${text}`).join('&');
        const { inputs } = readLink(stiffSpring, `#v=1&${fragment}`);
        const outside = Object.entries(inputs).filter(([name, value]) => {
          const spec = model.inputs[name];
          if (!spec) return true;
          if (isChoice(spec)) return !spec.options.includes(String(value));
          return clamped(spec, Number(value)) !== value;
        });
        expect(outside).toEqual([]);
        taken += Object.keys(inputs).length;
      }),
    );
    expect(taken).toBeGreaterThan(20);
  });
  it.each([
    ['a stranger', 'v=1&colour=red', 'colour=red'],
    ['a value out of range', 'v=1&gaugeLength=9', 'gaugeLength=9'],
    ['half a number', 'v=1&stretch=', 'stretch='],
    ['a choice between two', 'v=1&released=0.5', 'released=0.5'],
    ['a choice past the last', 'v=1&released=2', 'released=2'],
    ['a choice of no name', 'v=1&released=letgo', 'released=letgo'],
    ['a name from the object’s own house', 'v=1&__proto__=1', '__proto__=1'],
    ['a later version', 'v=99&stretch=0.0002', 'v=99'],
  ])('reports %s and leaves it out', (_, fragment, refused) =>
    expect(readLink(stiffSpring, fragment)).toEqual({ inputs: {}, refused: [refused] }),
  );
  it('holds a choice by its name', () =>
    expect(linkFragment(stiffSpring, { ...start, released: 'letGo' })).toBe('v=1&released=letGo'));
  it('leaves an ordinary anchor alone', () =>
    expect(readLink(stiffSpring, '#in-numbers')).toEqual({ inputs: {}, refused: [] }));
});

/** Every choice that a link has ever counted, with what each number stood for; old links keep opening. */
describe.each([
  ['stiff-spring', 'released', ['held', 'letGo']],
  ['screw-takes-its-cut', 'threadForm', ['square', 'acme', 'trapezoidal', 'v60']],
  ['screw-takes-its-cut', 'shown', ['thrust', 'stress']],
  ['counting-turns', 'tensioner', ['stiffFrame', 'discWashers', 'softSpring', 'oil']],
  ['counting-turns', 'turnStep', ['fiveDegrees', 'fifteenDegrees', 'eighth', 'quarter']],
  ['theory-meets-measurement', 'shown', ['line', 'fit']],
  ['theory-meets-measurement', 'sheet', ['first', 'second', 'third', 'fourth']],
  ['theory-meets-measurement', 'reason', ['nothing', 'dryThread', 'twoStarts', 'forgottenStrand']],
])('the choice of %s, %s', (slug, name, options) => {
  const lesson = models[slug];
  if (!lesson) throw new Error(`${slug} has no model`);

  it.each(options.map((option, number) => [number, option] as const))(
    'opens from the number %i of an old link and from its name %s',
    (number, option) => {
      const opened = { inputs: { [name]: option }, refused: [] };
      expect(readLink(lesson, `#v=1&${name}=${number}`)).toEqual(opened);
      expect(readLink(lesson, `#v=1&${name}=${option}`)).toEqual(opened);
    },
  );
  it.each(options)('comes back as it was sent: %s', (option) => {
    const sent = { ...defaults(lesson), [name]: option };
    const { inputs } = readLink(lesson, linkFragment(lesson, sent));
    expect({ ...defaults(lesson), ...inputs }).toEqual(sent);
  });
});
