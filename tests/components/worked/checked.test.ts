/** A name misspelt in a worked example is refused with the file that has it, and never shown as a number. */
import { describe, expect, it } from 'vitest';
import { checkExample } from '../../../src/components/worked/checked.ts';
import { stiffSpring } from '../../../src/lessons/stiff-spring/model.ts';
import type { ExampleTemplate } from '../../../src/models/example.ts';

const FILE = 'content/worked/x.yaml';
const example: ExampleTemplate = {
  lesson: 'stiff-spring',
  figure: 'strip',
  controls: ['stretch'],
  states: { read: { stretch: 2e-4 }, long: { gaugeLength: 0.6 } },
  situation: 'The dial moved {stretch}.',
  answer: 'It is {stress:2}, or {stress@long}.',
  steps: ['Divide by {gaugeLength}.'],
  notice: 'Nothing.',
  change: {
    say: 'pull to {stretch}',
    input: 'stretch',
    to: 3e-4,
    happens: 'Now {stress@changed}.',
  },
};
const { change } = example;
const check = (other: Partial<ExampleTemplate>) => () =>
  checkExample(FILE, stiffSpring, { ...example, ...other });

describe('the names in a worked example', () => {
  it('are taken where the model has them all', () => expect(check({})).not.toThrow());

  it.each<[string, Partial<ExampleTemplate>]>([
    ['situation must be a quantity', { situation: 'It moved {strech}.' }],
    ['answer must be words and {names}', { answer: 'It is {stress.' }],
    ['answer must be words and {names}', { answer: 'It is {stress@}.' }],
    ['answer must name one of its states (was lon)', { answer: 'It is {stress@lon}.' }],
    ['answer must name one of its states (was toString)', { answer: '{stress@toString}' }],
    ['step 2 must be a quantity', { steps: ['First.', 'Then {stres}.'] }],
    ['notice must be a quantity', { notice: '{released}' }],
    ['controls must be an input', { controls: ['strech', 'stretch'] }],
    ['state long must be an input', { states: { read: {}, long: { gaugelength: 1 } } }],
    ['state read stretch must be a value', { states: { read: { stretch: 1 } } }],
    ['states must not have one called changed', { states: { changed: { stretch: 2e-4 } } }],
    ['the first state must differ from the lesson’s', { states: { read: { stretch: 1e-4 } } }],
    ['change must be an input', { change: { ...change, input: 'strech' } }],
    ['change stretch must be a value', { change: { ...change, to: 1 } }],
    ['change must be of one of its controls', { controls: ['gaugeLength'] }],
    ['change must differ from the first state', { change: { ...change, to: 2e-4 } }],
    ['change say must be a quantity', { change: { ...change, say: '{strech}' } }],
    ['change happens must be a quantity', { change: { ...change, happens: '{stres}' } }],
  ])('are refused: %s', (reason, other) => expect(check(other)).toThrow(`${FILE}: ${reason}`));
});
