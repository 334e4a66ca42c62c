/** What a teacher is told of a set of sheets: fewer questions than asked for, or questions that neighbors share. */
import type { DrawnSheet } from './drawn.ts';

/** The questions, by their places from 1, that two sheets behind each other share word for word. */
export const sharedByNeighbors = (sheets: readonly DrawnSheet[]): readonly number[] =>
  (sheets[0]?.questions ?? []).flatMap((_, place) => {
    const asks = sheets.map(({ questions }) => questions[place]?.ask);
    return asks.slice(1).some((ask, at) => ask === asks[at]) ? [place + 1] : [];
  });

/** All of it, in words; empty where there is nothing to tell. */
export function remarksOn(sheets: readonly DrawnSheet[], wanted: number): string {
  const { length } = sheets[0]?.questions ?? [];
  const shared = sharedByNeighbors(sheets);
  return [
    ...(length < wanted
      ? [`These lessons have ${length} ${length === 1 ? 'question' : 'questions'} in all.`]
      : []),
    ...(shared.length > 0
      ? [
          `Sheets beside each other share the numbers of question ${shared.join(' and ')}: it has too few.`,
        ]
      : []),
  ].join(' ');
}
