/** What the card's numbers hold with: when and how they were found. What is not known leaves a line for the pen. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { part } from '../kit/part.tsx';
import { testsLittle } from '../state/carried.ts';
import type { SheetView } from '../state/view.ts';
import { dialRunsWords, verdictWords } from './contents.ts';

interface Props {
  readonly gives: string | undefined; // the stress of the measured band
  readonly results: WorksheetResults;
  readonly isSureSaid: boolean; // beside the torque
  readonly isLimitSaid: boolean; // above
}

type Fact = readonly [name: string, value: string];

function said(value: number | undefined, kind: QuantityKind, { shown }: SheetView): string {
  return value === undefined ? '' : shown().quantity(value, kind);
}

const screwFacts = (sheet: SheetView): readonly Fact[] => [
  ['Thread', sheet.text('tensioner.thread.designation')],
  ['Grease', sheet.text('grease')],
  ['Wrench', sheet.text('wrench')],
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
    ['Gauge', sheet.text('gauge')],
    ['No-load pressure', said(noLoadPressure, 'pressure', sheet)],
  ];
}

/** Date, thread, grease, wrench or piston and gauge, no-load torque, highest reading, the dial's way; how sure and limits where they are not said yet. */
export const CardFacts = part<Props>(({ results, gives, isSureSaid, isLimitSaid }, sheet) => {
  const { quantity, load } = sheet.shown();
  const { measured, dialRuns } = results;
  const worksheet = sheet.worksheet();
  const runsBackwards = worksheet?.rig.dialRunsBackwards ?? dialRuns?.backwards;
  const facts = [
    ...(isSureSaid ? [] : [['How sure', verdictWords(results, testsLittle(sheet))] as const]),
    ...(gives ? [['Stress in the band, 95 %', gives] as const] : []),
    ['Measured on', sheet.text('measuredOn')],
    ...(load.name === 'torque' ? screwFacts(sheet) : cylinderFacts(sheet)),
    ['Highest reading', measured.ready ? quantity(measured.topTorque, load.name) : ''],
    ['The dial’s number', dialRunsWords(runsBackwards)],
    ...(isLimitSaid ? [] : [['The makers allow', ''] as const]),
  ] satisfies readonly Fact[];
  return (
    <dl class="card-facts">
      {facts.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
});
