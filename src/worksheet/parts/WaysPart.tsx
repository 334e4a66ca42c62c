/** Named ways of setting: a mark, a feel, a count; each with its torque or readings of its own. */
import type { JSX } from 'preact';
import { part } from '../kit/part.tsx';
import { RowsSaid, Section, WhenOpen } from '../kit/Section.tsx';
import { LateWayResults, LateWays } from '../results/late.ts';

/** Part 7. */
export const WaysPart = part((_, sheet): JSX.Element => {
  return (
    <Section
      id="ways"
      says={<RowsSaid list="ways" one="one way" many="ways" />}
      boxes={
        <>
          <p class="how">
            Write each down with its {sheet.shown().load.name}, or with dial readings taken while
            the bar stays clamped as for the series.
          </p>
          <WhenOpen id="ways" list="ways">
            <LateWays />
          </WhenOpen>
        </>
      }
      results={<LateWayResults />}
    />
  );
});
