/** What the card's numbers hold with: when and how they were found. What is not known leaves a line for the pen. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { part } from '../kit/part.tsx';
import { testsLittle } from '../state/carried.ts';
import type { SheetView } from '../state/view.ts';
import { dialRunsWords, limitWords, verdictWords } from './contents.ts';

interface Props {
  readonly results: WorksheetResults;
}

type Fact = readonly [name: string, value: string, look?: string];

function said(value: number | undefined, kind: QuantityKind, { shown }: SheetView): string {
  return value === undefined ? '' : shown().quantity(value, kind);
}

const screwFacts = (sheet: SheetView): readonly Fact[] => [
  ['Thread', sheet.text('tensioner.thread.designation')],
  ['Grease', sheet.text('grease'), 'is-wide'],
  ['Wrench', sheet.text('wrench'), 'is-wide'],
  ['No-load torque', said(sheet.worksheet()?.tensioner.dragTorque, 'torque', sheet)],
];

function cylinderFacts(sheet: SheetView): readonly Fact[] {
  const { pistonDiameter, rodDiameter, noLoadPressure } =
    sheet.worksheet()?.tensioner.cylinder ?? {};
  const sizes = [
    said(pistonDiameter, 'length', sheet),
    rodDiameter && `rod ${said(rodDiameter, 'length', sheet)}`,
  ];
  return [
    ['Piston', sizes.filter(Boolean).join(', ')],
    ['Gauge', sheet.text('gauge'), 'is-wide'],
    ['No-load pressure', said(noLoadPressure, 'pressure', sheet)],
  ];
}

/** Date, verdict, thread, grease, wrench or piston and gauge, no-load torque, highest reading, the dial's way, limits. */
export const CardFacts = part<Props>(({ results }, sheet) => {
  const shown = sheet.shown();
  const { quantity, load } = shown;
  const { measured, dialRuns } = results;
  const worksheet = sheet.worksheet();
  const runsBackwards = worksheet?.rig.dialRunsBackwards ?? dialRuns?.backwards;
  const facts = [
    ['How sure', verdictWords(results, testsLittle(sheet)), 'is-wide'],
    ['Measured on', sheet.text('measuredOn')],
    ...(load.name === 'torque' ? screwFacts(sheet) : cylinderFacts(sheet)),
    ['Highest reading', measured.ready ? quantity(measured.topTorque, load.name) : ''],
    ['The dial’s number', dialRunsWords(runsBackwards)],
    ['Makers allow', worksheet ? limitWords(worksheet.target, shown) : ''],
  ] satisfies readonly Fact[];
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
