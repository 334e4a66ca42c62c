/** What the card's numbers hold with: when and how they were found. What is not known leaves a line for the pen. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { dialRunsWords, limitWords, verdictWords } from './contents.ts';

interface Props {
  readonly results: WorksheetResults;
}

/** Date, verdict, thread, grease, wrench, no-load torque, highest reading, the dial's way, limits. */
export const CardFacts = part<Props>(({ results }, sheet) => {
  const shown = sheet.shown();
  const { quantity } = shown;
  const { measured, dialRuns } = results;
  const worksheet = sheet.worksheet();
  const noLoad = worksheet?.tensioner.dragTorque;
  const runsBackwards = worksheet?.rig.dialRunsBackwards ?? dialRuns?.backwards;
  const facts = [
    ['How sure', verdictWords(results), 'is-wide'],
    ['Measured on', sheet.text('measuredOn')],
    ['Thread', sheet.text('tensioner.thread.designation')],
    ['Grease', sheet.text('grease'), 'is-wide'],
    ['Wrench', sheet.text('wrench'), 'is-wide'],
    ['No-load torque', noLoad === undefined ? '' : quantity(noLoad, 'torque')],
    ['Highest reading', measured.ready ? quantity(measured.topTorque, 'torque') : ''],
    ['The dial’s number', dialRunsWords(runsBackwards)],
    ['Makers allow', worksheet ? limitWords(worksheet.target, shown) : ''],
  ] as const;
  return (
    <dl class="card-facts">
      {facts.map(([name, value, look]) => (
        <div key={name} class={look}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
});
