/** Everything on the site that can be found, gathered at build. */
import { getCollection } from 'astro:content';
import type { Findable } from '../../live/search/options.ts';
import { SHEET_PARTS } from '../../worksheet/folds/sheet-parts.ts';
import { OTHER_PARTS } from '../teach/elsewhere.ts';
import { TEACHING_PARTS } from '../teach/parts.ts';

type Draft = Omit<Findable, 'id'>;

/** Markup and what stands for numbers, taken out of a text. */
const plain = (text: string): string => text.replaceAll(/\{[^}]*\}|<[^>]*>|\*/g, ' ');

/** What the text of a lesson is about, by the titles in it. */
const headings = (body = ''): string =>
  [...body.matchAll(/^#+ (.+)$|<Fold title="([^"]+)"/gm)]
    .map(([, heading, fold]) => heading ?? fold)
    .join('. ');

async function lessons(): Promise<readonly Draft[]> {
  return (await getCollection('lessons')).map(({ id, data, body }) => ({
    title: data.title,
    says: data.question,
    words: `${data.summary} ${headings(body)}`,
    kind: 'Lesson',
    to: `/lessons/${id}/`,
  }));
}

async function asked(): Promise<readonly Draft[]> {
  return (await getCollection('asked')).map(({ data: { asks, says, words, to } }) => ({
    title: asks,
    says,
    words,
    kind: 'Question',
    to,
  }));
}

async function examples(): Promise<readonly Draft[]> {
  return (await getCollection('worked')).map(({ id, data: { title, question, place } }) => ({
    title: question,
    says: `${title}, ${place}`,
    words: '',
    kind: 'Worked example',
    to: `/worked/${id}/`,
  }));
}

async function terms(): Promise<readonly Draft[]> {
  return (await getCollection('terms')).map(({ id, data: { term, meaning } }) => ({
    title: term,
    says: meaning,
    words: '',
    kind: 'Word',
    to: `/reference/glossary/#${id}`,
  }));
}

async function formulae(): Promise<readonly Draft[]> {
  return (await getCollection('formulae')).flatMap(({ data }) =>
    data.formulae.map(({ name, limits }) => ({
      title: name,
      says: limits,
      words: data.title,
      kind: 'Formula',
      to: '/reference/formulae/',
    })),
  );
}

async function plans(): Promise<readonly Draft[]> {
  return (await getCollection('workshops')).map(({ id, data: { title, summary, aims } }) => ({
    title,
    says: summary,
    words: aims.join(' '),
    kind: 'Plan for a class',
    to: `/teach/plans/${id}/`,
  }));
}

const pages = (): readonly Draft[] =>
  [...TEACHING_PARTS, ...OTHER_PARTS].map(({ title, address, says }) => ({
    title,
    says,
    words: 'class teacher',
    kind: 'Page',
    to: address,
  }));

const sheet = (): readonly Draft[] =>
  Object.values(SHEET_PARTS).map(({ title, why }) => ({
    title,
    says: why,
    words: 'worksheet my mill setting card',
    kind: 'Worksheet',
    to: '/worksheet/',
  }));

/** All of it, numbered. */
export async function documents(): Promise<readonly Findable[]> {
  const drafts = await Promise.all([
    asked(),
    lessons(),
    examples(),
    terms(),
    formulae(),
    plans(),
    pages(),
    sheet(),
  ]);
  return drafts.flat().map((draft, id) => ({ ...draft, says: plain(draft.says), id }));
}
