/** The window with its boxes: what the band must serve, the window itself, and, folded, what is allowed. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { Seldom } from '../kit/Section.tsx';
import { WindowResults } from './Results.tsx';

/** Three that only the mill can tell, then those that have a value of their own. */
export function WindowBoxes(): JSX.Element {
  return (
    <>
      <p class="hint">
        Too slack, the teeth wander and the band slips. Too tight, it cracks. Width over the teeth
        and wheels count too.
      </p>
      <Box path="demands.guideSpan" />
      <Box path="demands.speed" />
      <Box path="demands.power" />
      <WindowResults />
      <Seldom
        name="What you allow it"
        paths={[
          'demands.push',
          'demands.movement',
          'demands.rimFriction',
          'demands.lifeKept',
          'demands.lifeExponent',
          'demands.warming',
        ]}
      />
    </>
  );
}
