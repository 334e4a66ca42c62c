/** The boxes of the bar and its dial, and the plan. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { late } from '../kit/late.tsx';
import { part } from '../kit/part.tsx';
import { AskedIf, Seldom } from '../kit/Section.tsx';

const SELDOM = [
  'rig.gaugeLengthHalfWidth',
  'rig.warmed',
  'rig.repeatability',
  'rig.barWeight',
  'rig.barHeight',
] as const;

const LatePlan = late(() => import('../plan/Plan.tsx'), 'Plan');

/** What can be planned at home; fetched, and worked out, only while it is open. */
const PlanFold = part((_, { isPlanning }) => (
  <details
    id="plan"
    class="more-results needs-script no-print"
    onToggle={({ currentTarget }) => {
      isPlanning.value = currentTarget.open;
    }}
  >
    <summary>Plan your measurement before you go out</summary>
    {isPlanning.value && <LatePlan />}
  </details>
));

/** Whole turns are counted only by who does not write them with the hand. */
const Writing = part((_, sheet) => (
  <>
    <Choice path="rig.dialWritten" />
    <AskedIf
      isAsked={
        sheet.chosen('rig.dialWritten') !== 'together' || sheet.text('rig.travelPerTurn') !== ''
      }
    >
      <Box path="rig.travelPerTurn" />
    </AskedIf>
  </>
));

/** All of them. */
export function RigBoxes(): JSX.Element {
  return (
    <>
      <Box path="rig.gaugeLength" />
      <Box path="rig.graduation" />
      <Box path="rig.readTo" />
      <Choice path="rig.dialRuns" />
      <Writing />
      <Choice path="rig.barMaterial" />
      <Seldom name="Warmth, your own repeats, weight of the bar" paths={SELDOM} />
      <PlanFold />
    </>
  );
}
