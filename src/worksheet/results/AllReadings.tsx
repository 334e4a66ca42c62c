/** What the readings come to, what is to be said of them, and the chart. */
import type { JSX } from 'preact';
import { LateChart } from '../chart/LateChart.tsx';
import { Guards } from '../kit/Guards.tsx';
import { StressResults } from './StressResults.tsx';

/** All of it. */
export function AllReadings(): JSX.Element {
  return (
    <>
      <StressResults />
      <Guards part="readings" />
      <LateChart />
    </>
  );
}
