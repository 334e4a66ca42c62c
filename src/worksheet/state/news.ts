/** Results on their way from a worker: only what has changed since the last ones is sent, and put to them on arrival. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { Answers } from './answers.ts';
import { sharing } from './sharing.ts';

/** Answers as they are sent. */
export type News = Omit<Answers, 'results'> & { readonly results?: Partial<WorksheetResults> };

type Parts = Readonly<Record<string, unknown>>;

/** The parts that are others than before, and undefined for one that is no longer there. */
function changedParts(was: Parts, is: Parts): Parts {
  const names = Object.keys({ ...was, ...is }).filter((name) => was[name] !== is[name]);
  return Object.fromEntries(names.map((name) => [name, is[name]]));
}

/** Takes out of answers, one after the other, what was sent before. */
export function newsOnly(): (answers: Answers) => News {
  let sent: Parts = {};
  return ({ results, ...others }) => {
    if (!results) return others;
    const last = sent;
    sent = { ...sharing(last, results) };
    return { ...others, results: changedParts(last, sent) };
  };
}

/** Makes whole answers of news that come in the order in which they were sent. */
export function wholeAgain(): (news: News) => Answers {
  let whole = {} as WorksheetResults; // the first news have all of it
  return ({ results, ...others }) => {
    if (!results) return others;
    whole = { ...whole, ...results };
    return { ...others, results: whole };
  };
}
