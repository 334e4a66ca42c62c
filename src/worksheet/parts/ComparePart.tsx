/** Theory beside measurement. */
import type { JSX } from 'preact';
import { part } from '../kit/part.tsx';
import { Section } from '../kit/Section.tsx';
import { LateCompare, LateSecond, LateSecondResults } from '../results/late.ts';
import { testsLittle } from '../state/carried.ts';
import { AGREES, TESTS_LITTLE } from '../words/answer-words.ts';

const Verdict = part((_, sheet) => {
  const agreement = sheet.result('agreement');
  if (!agreement?.ready) return null;
  return testsLittle(sheet) ? `${AGREES.agree}, ${TESTS_LITTLE}` : AGREES[agreement.verdict];
});

const SECOND = ['second.note', 'second.force', 'second.tightening', 'second.pumping'] as const;

/** Three more ways to the stress, for who wants to be surer. */
const Second = part((_, sheet) => {
  const isFilled = SECOND.some((path) => sheet.text(path) !== '');
  return (
    <details class="seldom" open={isFilled}>
      <summary>A second opinion: pluck it, press it</summary>
      {(isFilled || sheet.openParts.value.has('compare')) && <LateSecond />}
    </details>
  );
});

/** Part 6. */
export function ComparePart(): JSX.Element {
  return (
    <Section
      id="compare"
      says={<Verdict />}
      boxes={
        <>
          <p class="how">If they do not agree, find out why before you set anything.</p>
          <Second />
        </>
      }
      results={
        <>
          <LateCompare />
          <LateSecondResults />
        </>
      }
    />
  );
}
