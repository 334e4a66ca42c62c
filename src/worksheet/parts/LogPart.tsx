/** The log's place on the sheet: it is fetched when its part is opened, or there is something to print in it. */
import type { JSX } from 'preact';
import { late } from '../kit/late.tsx';
import { part } from '../kit/part.tsx';
import { Section } from '../kit/Section.tsx';

const LateLog = late(() => import('../log/Log.tsx').then(({ Log }) => Log));

const WhenWanted = part((_, sheet) => {
  const isWanted = sheet.openParts.value.has('log') || sheet.rows('log') > 0;
  return sheet.isLive() && isWanted ? <LateLog /> : null;
});

const Count = part((_, sheet) => {
  const count = sheet.rows('log');
  return count === 0 ? null : `${count} entries`;
});

/** The log. */
export function LogPart(): JSX.Element {
  return <Section id="log" says={<Count />} boxes={<WhenWanted />} />;
}
