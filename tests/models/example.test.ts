import { describe, expect, it } from 'vitest';
import { examplePieces, inputsIn, startState } from '../../src/models/example.ts';

const change = { say: '', input: 'pull', to: 3, happens: '' };
const example = { states: { first: { pull: 1, strands: 'two' }, other: { pull: 2 } }, change };

describe('the states of an example', () => {
  it('start with the first', () => expect(startState(example)).toBe('first'));
  it('differ from it in what they name', () => {
    expect(inputsIn(example, 'first')).toEqual({ pull: 1, strands: 'two' });
    expect(inputsIn(example, 'other')).toEqual({ pull: 2, strands: 'two' });
  });
  it('have one more, with the one change', () =>
    expect(inputsIn(example, 'changed')).toEqual({ pull: 3, strands: 'two' }));
  it.each(['third', 'toString', ''])('have none called %j', (state) =>
    expect(() => inputsIn(example, state)).toThrow(`state must be known (was ${state})`),
  );
  it('are at least one', () =>
    expect(() => startState({ states: {} })).toThrow('states must be at least 1'));
});

describe('the words of an example', () => {
  it('fall into words and numbers, each with its state and its digits', () =>
    expect(examplePieces('From {stress:2} to {stress@other}, {pull@other:3}.')).toEqual([
      { text: 'From ' },
      { name: 'stress', digits: 2 },
      { text: ' to ' },
      { name: 'stress', state: 'other' },
      { text: ', ' },
      { name: 'pull', state: 'other', digits: 3 },
      { text: '.' },
    ]));
  it.each(['{stress@}', '{@other}', '{stress:22}', '{}', 'no number'])(
    'leave %s as it is',
    (text) => expect(examplePieces(text)).toEqual([{ text }]),
  );
});
