/** The measurement planned before anyone goes out: its boxes, what it would reach, and a sheet to take along. */
import type { JSX } from 'preact';
import { planRepeats } from '../../core/plan.ts';
import { Box } from '../kit/Box.tsx';
import { part } from '../kit/part.tsx';
import { defaultTopSentence } from '../words/plan-words.ts';
import { Kind } from './Kind.tsx';
import { topOn } from './limit.ts';
import { ownAnswer } from './planner.ts';
import { printPlan } from './printing.ts';
import { plannedOn } from './questions.ts';
import { Reach } from './Reach.tsx';
import { WrenchUnit } from './WrenchUnit.tsx';

/** Waits for the answer, so that no sheet goes out without the warnings about its top. */
const Take = part((_, sheet) => (
  <p>
    <button
      class="button"
      type="button"
      disabled={ownAnswer(sheet) === undefined}
      onClick={() => printPlan(document, sheet)}
    >
      Print a sheet to take along
    </button>
  </p>
));

const DefaultTop = part((_, sheet) => {
  const planned = plannedOn(sheet);
  const says = typeof planned === 'object' && defaultTopSentence(planned, sheet.shown());
  return says ? <p class="plan-default">{says}</p> : null;
});

const AtTop = part((_, sheet) => <p class="plan-top">{topOn(sheet, ownAnswer(sheet))}</p>);

const Loads = part((_, sheet) => {
  const isScrew = sheet.shown().load.name === 'torque';
  const [top, first] = isScrew
    ? (['plan.topTorque', 'plan.firstTorque'] as const)
    : (['plan.topPressure', 'plan.firstPressure'] as const);
  return (
    <>
      <Box path={top} />
      <WrenchUnit path={top} />
      <DefaultTop />
      <AtTop />
      <Box path={first} />
      <WrenchUnit path={first} />
    </>
  );
});

/** The inside of the fold. */
export function Plan(): JSX.Element {
  return (
    <div class="plan">
      <p class="how">
        This page tries your plan {planRepeats} times on invented mills. There, bands straighten
        late, hands warm the bar, and loads miss a little. Bar and dial are those that you entered
        above.
      </p>
      <Kind />
      <Loads />
      <Box path="plan.steps" />
      <Box path="plan.series" />
      <Reach />
      <Take />
    </div>
  );
}
