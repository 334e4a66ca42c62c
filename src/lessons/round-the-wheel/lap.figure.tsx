/**
 * One lap of the band: the mill with a place on its band marked, and the trace of the stress there. The mark moves by
 * hand, and runs when it is asked to.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { lapLayout } from './lap/layout.ts';
import { MillLoop } from './lap/MillLoop.tsx';
import { Trace } from './lap/Trace.tsx';
import { roundTheWheel } from './model.ts';
import type { Figure, State } from './state.ts';

const say = teller(roundTheWheel);

function finding(state: State): string {
  const [peak, share] = [say(state, 'peak', 3), say(state, 'shareOfYield', 2)];
  if (state.values.speed === 0)
    return `At rest a wheel pulls the outer face to ${peak}, ${share} of the least yield, without a swing.`;
  if (state.values.isSlipping === 1)
    return `The driving wheel would slip at this power: the peak stays at ${peak}, ${share} of the least yield.`;
  return `${say(state, 'bends', 3)} times an hour the outer face is pulled to about ${peak}, ${share} of the least yield.`;
}

function description(state: State): string {
  return `A band on two wheels with a place marked on it, and the stress on its outer face along a lap: ${say(state, 'slackStress')} in the slack strand, ${say(state, 'tightStress')} after the log, ${say(state, 'edgeBend')} more on each wheel; at the mark ${say(state, 'stressHere')}.`;
}

function notes(state: State): readonly string[] {
  return [
    `speed adds ${say(state, 'runAdds', 2)}`,
    `the cut tightens one strand by ${say(state, 'cutAdds', 2)}, slackens the other`,
    `bend × ${say(state, 'edgeFactor')} at the gullets`,
    'even fall on the driving wheel assumed',
  ];
}

function Drawing(state: State) {
  const layout = lapLayout(state.narrow);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <MillLoop state={state} layout={layout} />
      <Trace state={state} layout={layout} />
    </Sheet>
  );
}

/** The figure of a lap. */
export const figure: Figure = { finding, description, notes, Drawing };
