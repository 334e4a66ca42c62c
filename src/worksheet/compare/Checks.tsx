/** What is odd about screw or cylinder, and what to check where theory and measurement are apart: likeliest first. */
import type { JSX } from 'preact';
import { PartLink } from '../kit/PartLink.tsx';
import { part } from '../kit/part.tsx';
import { FIND_OUT, untilThen } from './apart-words.ts';
import { causeSentence, ratioWords, remarkSentence } from './cause-words.ts';
import { areApart } from './held-back.ts';

/** What is odd, also where the two agree. */
export const Remarks = part((_, sheet) =>
  (sheet.result('remarks') ?? []).map((remark) => (
    <p class="result-which" data-result={remark.code} key={remark.code}>
      {remarkSentence(remark, sheet.shown())}
    </p>
  )),
);

/** What to do first while the two do not agree, with the way to the checks; nothing while they do. */
export const FindOutFirst = part((_, sheet) => {
  const measured = sheet.result('measured');
  if (!measured?.ready || !areApart(sheet)) return null;
  return (
    <p class="result-which" data-result="find-out-first">
      {FIND_OUT.what} <PartLink to="compare">{FIND_OUT.where}</PartLink>.{' '}
      {untilThen(measured.topTorque, sheet.shown())}
    </p>
  );
});

const List = part((_, sheet): JSX.Element => {
  const causes = sheet.result('causes')?.causes ?? [];
  return (
    <ol class="checks" data-result="causes">
      {causes.map((cause) => (
        <li key={cause.name}>{causeSentence(cause, sheet.shown())}</li>
      ))}
    </ol>
  );
});

/** What to check; folded away where the two agree by a lever, which may be there. */
export const Checks = part((_, sheet) => {
  const causes = sheet.result('causes');
  if (!causes) return null;
  const isLeverAlone =
    !areApart(sheet) &&
    sheet.result('remarks')?.every(({ code }) => code === 'agreesByLever') === true;
  if (isLeverAlone)
    return (
      <details class="seldom">
        <summary>There is no such lever: what to check</summary>
        <List />
      </details>
    );
  return (
    <>
      <p class="result-which">
        {ratioWords(causes.ratio, sheet.shown())} Check in this order, likeliest first:
      </p>
      <List />
    </>
  );
});
