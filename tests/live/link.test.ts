import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stiffSpring } from '../../src/lessons/stiff-spring/model.ts';
import { linkFragment, readLink } from '../../src/live/link.ts';
import { defaults } from '../../src/models/define-model.ts';
import { evenly } from '../evenly.ts';

const start = defaults(stiffSpring);

describe('the link of a lesson', () => {
  it('is empty while nothing differs from the lesson', () =>
    expect(linkFragment(stiffSpring, start)).toBe(''));
  it('holds the version, then only what differs, readable and in SI', () =>
    expect(linkFragment(stiffSpring, { ...start, stretch: 0.00025 })).toBe('v=1&stretch=0.00025'));
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
          const spec = stiffSpring.inputs[name];
          return !spec || !(value >= spec.min && value <= spec.max);
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
    ['a name from the object’s own house', 'v=1&__proto__=1', '__proto__=1'],
    ['a later version', 'v=99&stretch=0.0002', 'v=99'],
  ])('reports %s and leaves it out', (_, fragment, refused) =>
    expect(readLink(stiffSpring, fragment)).toEqual({ inputs: {}, refused: [refused] }),
  );
  it('leaves an ordinary anchor alone', () =>
    expect(readLink(stiffSpring, '#in-numbers')).toEqual({ inputs: {}, refused: [] }));
});
