/** Under the bars: what would narrow the prediction next, and what it assumes. */
import type { JSX } from 'preact';
import type { WorksheetResults } from '../../core/worksheet.ts';
import { formatNumber } from '../../units/format-number.ts';
import { partOf } from '../folds/sheet-parts.ts';
import { PartLink } from '../kit/PartLink.tsx';
import { part } from '../kit/part.tsx';
import { assumedWords, nextBoxName } from '../words/assumed-words.ts';

const percent = (share: number) => `±${formatNumber(100 * share, { significant: 2 })} %`;

type Next = WorksheetResults['nextBoxes'][number];

function NextBox({ path, halfWidthShare }: Next): JSX.Element {
  return (
    <li>
      <PartLink to={partOf(path) ?? 'start'}>{nextBoxName(path)}</PartLink>:{' '}
      {percent(halfWidthShare)}
    </li>
  );
}

const MOST_NAMED = 3;
const LEAST_GAIN = 0.01; // of the stress: less is not worth a walk to the mill

/** What to fill in next while nothing is measured, that which brings the most first. */
const WhatNext = part((_, sheet) => {
  const [predicted, measured] = [sheet.result('predicted'), sheet.result('measured')];
  if (!predicted?.ready || measured?.ready) return null;
  const worth = (sheet.result('nextBoxes') ?? []).filter(({ gain }) => gain >= LEAST_GAIN);
  const hasReadings = sheet.rows('readings') > 0;
  if (hasReadings && worth.length === 0) return null;
  return (
    <div class="answer-note">
      <p>What would narrow it most, and how well you would know it then:</p>
      <ul>
        {worth.slice(0, MOST_NAMED).map((box) => (
          <NextBox key={box.path} {...box} />
        ))}
        {!hasReadings && (
          <li>
            <PartLink to="rig">Readings with a dial</PartLink>: no friction in them at all
          </li>
        )}
      </ul>
    </div>
  );
});

/** What stands for boxes that are empty. */
const Assumed = part((_, sheet) => {
  const [assumed, shown] = [sheet.result('assumed') ?? [], sheet.shown()];
  if (assumed.length === 0) return null;
  return (
    <details class="answer-assumed">
      <summary>What the prediction assumes ({assumed.length})</summary>
      <ul>
        {assumed.map((each) => (
          <li key={each.name}>{assumedWords(each, shown)}</li>
        ))}
      </ul>
    </details>
  );
});

/** Both. */
export function Narrowing(): JSX.Element {
  return (
    <>
      <WhatNext />
      <Assumed />
    </>
  );
}
