/** The log's place on the sheet: it is fetched when its part is opened, or there is something to print in it. */
import type { JSX } from 'preact';
import { late } from '../kit/late.tsx';
import { part } from '../kit/part.tsx';
import { RowsSaid, Section, WhenOpen } from '../kit/Section.tsx';

const LateLog = late(() => import('../log/Log.tsx'), 'Log');

const Lines = part((_, sheet) =>
  sheet.isLive() ? (
    <WhenOpen id="log" list="log">
      <LateLog />
    </WhenOpen>
  ) : null,
);

/** The log. */
export function LogPart(): JSX.Element {
  return (
    <Section
      id="log"
      says={<RowsSaid list="log" one="one entry" many="entries" />}
      boxes={<Lines />}
    />
  );
}
