/** Theory beside measurement. */
import type { JSX } from 'preact';
import { part } from '../kit/part.tsx';
import { Section } from '../kit/Section.tsx';
import { LateCompare } from '../results/late.ts';
import { AGREES } from '../words/answer-words.ts';

const Verdict = part((_, sheet) => {
  const agreement = sheet.result('agreement');
  return agreement?.ready ? AGREES[agreement.verdict] : null;
});

/** Part 6. */
export function ComparePart(): JSX.Element {
  return (
    <Section
      id="compare"
      says={<Verdict />}
      boxes={
        <p class="how">
          The screw predicts a range of stress; your readings measure one. They do not depend on
          each other, so you can compare them. If they do not agree, trust the readings and look at
          the screw: <a href="../lessons/theory-meets-measurement/">Theory meets measurement</a>{' '}
          lists the reasons.
        </p>
      }
      results={<LateCompare />}
    />
  );
}
