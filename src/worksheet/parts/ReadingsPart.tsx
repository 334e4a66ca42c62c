/** Readings: the caution, how to take the series, the rows, what they come to, and the chart. */
import type { JSX } from 'preact';
import { LateRows } from '../insides/late.ts';
import { Inside, RowsSaid, Section } from '../kit/Section.tsx';
import { LateReadings } from '../results/late.ts';

/** Part 5. */
export function ReadingsPart(): JSX.Element {
  return (
    <Section
      id="readings"
      says={<RowsSaid list="readings" one="one row" many="rows" />}
      boxes={<Inside id="readings" of={LateRows} />}
      results={<LateReadings />}
    />
  );
}
