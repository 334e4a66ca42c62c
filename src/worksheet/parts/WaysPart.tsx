/** Named ways of setting: a mark, a feel, a count; each with its torque or readings of its own. */
import type { JSX } from 'preact';
import { RowsSaid, Section, WhenOpen } from '../kit/Section.tsx';
import { LateWayResults, LateWays } from '../results/late.ts';

/** Part 7. */
export function WaysPart(): JSX.Element {
  return (
    <Section
      id="ways"
      says={<RowsSaid list="ways" one="one way" many="ways" />}
      boxes={
        <>
          <p class="how">
            Write each down with its torque, or with dial readings taken while the bar stays clamped
            as for the series.
          </p>
          <WhenOpen id="ways" list="ways">
            <LateWays />
          </WhenOpen>
        </>
      }
      results={<LateWayResults />}
    />
  );
}
