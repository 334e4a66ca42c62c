/** What the ways of setting come to, and what is to be said of them. */
import type { JSX } from 'preact';
import { Guards } from '../kit/Guards.tsx';
import { WayBars } from './WayBars.tsx';
import { WayResults } from './WayResults.tsx';

/** All of them. */
export function AllWays(): JSX.Element {
  return (
    <>
      <WayBars />
      <WayResults />
      <Guards part="ways" />
    </>
  );
}
