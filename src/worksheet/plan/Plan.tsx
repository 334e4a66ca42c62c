/** The measurement planned before anyone goes out: its boxes, what it would reach, and a sheet to take along. */
import type { JSX } from 'preact';
import { planRepeats } from '../../core/plan.ts';
import { Box } from '../kit/Box.tsx';
import { part } from '../kit/part.tsx';
import { printPlan } from './printing.ts';
import { plannedOn } from './questions.ts';
import { Reach } from './Reach.tsx';

const Take = part((_, sheet) => (
  <p>
    <button
      class="button"
      type="button"
      disabled={typeof plannedOn(sheet) === 'string'}
      onClick={() => printPlan(document, sheet)}
    >
      Print a sheet to take along
    </button>
  </p>
));

const Loads = part((_, sheet) =>
  sheet.shown().load.name === 'torque' ? (
    <>
      <Box path="plan.topTorque" />
      <Box path="plan.firstTorque" />
    </>
  ) : (
    <>
      <Box path="plan.topPressure" />
      <Box path="plan.firstPressure" />
    </>
  ),
);

/** The inside of the fold. */
export function Plan(): JSX.Element {
  return (
    <div class="plan">
      <p class="how">
        The plan is tried out {planRepeats} times on invented mills: bands that straighten late,
        hands that warm the bar, loads that miss a little. Bar and dial are those above.
      </p>
      <Loads />
      <Box path="plan.steps" />
      <Box path="plan.series" />
      <Reach />
      <Take />
    </div>
  );
}
