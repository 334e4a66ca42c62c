/** What people type, and what they should find: the questions of the content, in words of their own. */
import MiniSearch from 'minisearch';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { type Findable, lookedUp, SEARCH } from '../../../src/live/search/options.ts';
import { textOf } from '../../structure/project-files.ts';

type Asked = Readonly<Record<'asks' | 'says' | 'to' | 'words', string>>;

const asked = Object.values<Asked>(parse(textOf('content/asked.yaml')));
const index = new MiniSearch<Findable>(SEARCH);
index.addAll(
  asked.map(({ asks, says, to, words }, id) => ({
    id,
    title: asks,
    says,
    words,
    kind: 'Question',
    to,
  })),
);
const firstFor = (question: string): string => index.search(question)[0]?.['title'] ?? 'nothing';

describe('a word', () => {
  it.each([
    ['Blades', 'band'],
    ['psi', 'stress'],
    ['tightening', 'tension'],
    ['Wheels', 'wheel'],
    ['snapping', 'crack'],
    ['springs', 'spring'],
    ['coiling', 'coil'],
    ['glass', 'glass'],
    ['Young’s', 'young'],
  ])('%s is looked up as %s', (typed, word) => expect(lookedUp(typed)).toBe(word));
  it.each(['the', 'I', 'How'])('%s says nothing', (typed) => expect(lookedUp(typed)).toBe(false));
});

describe('a question', () => {
  it.each([
    ['my blade is dove in the cut', 'Why does my band wander or cut waves?'],
    ['wavy lumber', 'Why does my band wander or cut waves?'],
    ['blades keep snapping', 'Why do my bands crack or break early?'],
    ['loose after lunch', 'Why has the band gone slack by lunch?'],
    ['how many psi', 'How tight should my band be?'],
    ['oil on the threads', 'Does grease change the tension?'],
    ['new blade wider', 'I bought a wider band. What is my new setting?'],
    ['dial indicator runs backward', 'How do I read a dial that runs backwards?'],
    ['hydrolic gauge', 'My mill has a hydraulic gauge. What does its pressure mean?'],
    ['check by sound with my phone', 'Can I check the tension by ear?'],
    ['convert mm to inches', 'How do I convert metric and US units?'],
    ['no internet in the yard', 'Can I use this without a signal?'],
    ['plan my measurement', 'How do I plan my measurement before I go out?'],
    ['before going out', 'How do I plan my measurement before I go out?'],
    ['sheet to take along', 'How do I plan my measurement before I go out?'],
    ['is it dangerous', 'What is dangerous about a band under tension?'],
  ])('%s finds: %s', (typed, found) => expect(firstFor(typed)).toBe(found));

  it('of the content finds itself', () => {
    for (const { asks } of asked) expect(firstFor(asks)).toBe(asks);
  });
  it('without a word that says anything finds nothing', () =>
    expect(index.search('how do I')).toEqual([]));
});
