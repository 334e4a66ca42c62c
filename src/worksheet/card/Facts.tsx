/** What the card's numbers hold with: when and how they were found. What is not known leaves a line for the pen. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { part } from '../kit/part.tsx';
import { testsLittle } from '../state/carried.ts';
import type { SheetView } from '../state/view.ts';
import {
  dialRunsWords,
  ownBandCalled,
  shortName,
  slackSeen,
  verdictWords,
  whoseWords,
} from './contents.ts';
import type { CardSetting } from './settings.ts';
import { gaugeWords, greaseWords, wrenchWords } from './tools.ts';

interface Props {
  readonly own: CardSetting | undefined; // of the measured band
  readonly isOneOfSeveral: boolean; // the measured band
  readonly results: WorksheetResults;
  readonly isLimitSaid: boolean; // above
}

type Fact = readonly [name: string, value: string];

function said(value: number | undefined, kind: QuantityKind, { shown }: SheetView): string {
  return value === undefined ? '' : shown().quantity(value, kind);
}

const tensionerOf = (sheet: SheetView) => sheet.worksheet()?.tensioner;

/** What is asked of the screw elsewhere on the sheet fills a box of words that is empty. */
const screwFacts = (sheet: SheetView): readonly Fact[] => [
  ['Thread', sheet.text('tensioner.thread.designation')],
  ['Grease', sheet.text('grease') || greaseWords(sheet)],
  ['Wrench', sheet.text('wrench') || wrenchWords(tensionerOf(sheet), sheet.shown())],
  ['No-load torque', said(tensionerOf(sheet)?.dragTorque, 'torque', sheet)],
];

function cylinderFacts(sheet: SheetView): readonly Fact[] {
  const { cylinder } = tensionerOf(sheet) ?? {};
  const { pistonDiameter, rodDiameter, noLoadPressure } = cylinder ?? {};
  const sizes = [
    said(pistonDiameter, 'length', sheet),
    rodDiameter && `rod ${said(rodDiameter, 'length', sheet)}`,
  ];
  return [
    ['Piston', sizes.filter(Boolean).join(', ')],
    ['Gauge', sheet.text('gauge') || gaugeWords(cylinder, sheet.shown())],
    ['No-load pressure', said(noLoadPressure, 'pressure', sheet)],
  ];
}

/** Date, thread, grease, wrench or piston and gauge, no-load torque, highest reading, the dial's way; how sure and limits where they are not said yet. */
export const CardFacts = part<Props>(({ results, own, isOneOfSeveral, isLimitSaid }, sheet) => {
  const { quantity, load } = sheet.shown();
  const { measured, dialRuns } = results;
  const worksheet = sheet.worksheet();
  const isSureSaid = own !== undefined && own.trust !== 'not yet'; // beside the torque
  const whose = isOneOfSeveral
    ? `, ${shortName(sheet.text('bandName'), ownBandCalled(results))}`
    : '';
  const verdict = verdictWords(results, testsLittle(sheet));
  const runsBackwards = worksheet?.rig.dialRunsBackwards ?? dialRuns?.backwards;
  const facts = [
    ...(isSureSaid ? [] : [['How sure', verdict] as const]),
    ...(own
      ? [[`Stress at ${own.torque}, 95 %`, own.gives + whoseWords(verdict, whose)] as const]
      : []),
    ['Measured on', sheet.text('measuredOn')],
    ...(load.name === 'torque' ? screwFacts(sheet) : cylinderFacts(sheet)),
    ['Dial read up to', measured.ready ? quantity(measured.topTorque, load.name) + whose : ''],
    ['The dial’s number', dialRunsWords(runsBackwards, slackSeen(results, sheet.shown()))],
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
