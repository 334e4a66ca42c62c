/** What the card's numbers hold with: when and how they were found. What is not known leaves a line for the pen. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { part } from '../kit/part.tsx';
import { testsLittle } from '../state/carried.ts';
import type { SheetView } from '../state/view.ts';
import {
  cardName,
  dialRunsWords,
  ownBandCalled,
  shortName,
  slackSeen,
  verdictWords,
} from './contents.ts';
import type { CardBand } from './settings.ts';
import { gaugeWords, greaseWords, wrenchWords } from './tools.ts';

interface Props {
  readonly blocks: readonly CardBand[]; // with their torques above, the measured band's first
  readonly isOneOfSeveral: boolean; // the measured band
  readonly results: WorksheetResults;
}

type Fact = readonly [name: string, value: string];

function said(value: number | undefined, kind: QuantityKind, { shown }: SheetView): string {
  return value === undefined ? '' : shown().quantity(value, kind);
}

const tensionerOf = (sheet: SheetView) => sheet.worksheet()?.tensioner;

/** Nobody is to add it to the setting. */
const counted = (noLoad: string): string => noLoad && `${noLoad}, counted in`;

/** Up to where each band is to be measured whose torque is provisional. */
const provisional = (blocks: readonly CardBand[]): readonly string[] =>
  blocks.flatMap((block, place) => {
    if (block.setting?.trust !== 'provisional') return [];
    const { torque, inOtherUnit } = block.setting;
    const whose = place === 0 ? '' : `${cardName(block, place - 1)} `; // the measured band is the first
    return [`${whose}up to ${torque}${inOtherUnit ? ` or ${inOtherUnit}` : ''}: provisional`];
  });

/** What is there of several, in one line. */
const listed = (words: readonly string[]): string => words.filter(Boolean).join(', ');

/** What is asked of the screw elsewhere on the sheet fills a box of words that is empty. */
const screwFacts = (sheet: SheetView): readonly Fact[] => [
  [
    'Thread, grease',
    listed([
      sheet.text('tensioner.thread.designation'),
      sheet.text('grease') || greaseWords(sheet),
    ]),
  ],
  ['Wrench', sheet.text('wrench') || wrenchWords(tensionerOf(sheet), sheet.shown())],
  ['No-load torque', counted(said(tensionerOf(sheet)?.dragTorque, 'torque', sheet))],
];

function cylinderFacts(sheet: SheetView): readonly Fact[] {
  const { cylinder } = tensionerOf(sheet) ?? {};
  const { pistonDiameter, rodDiameter, noLoadPressure } = cylinder ?? {};
  const sizes = [
    said(pistonDiameter, 'length', sheet),
    rodDiameter ? `rod ${said(rodDiameter, 'length', sheet)}` : '',
  ];
  return [
    ['Piston', listed(sizes)],
    ['Gauge', sheet.text('gauge') || gaugeWords(cylinder, sheet.shown())],
    ['No-load pressure', counted(said(noLoadPressure, 'pressure', sheet))],
  ];
}

/** The highest reading, unless it lies above what the makers allow: such a number would be set. */
const readUpTo = ({ measured, allowedLoad }: WorksheetResults): number | undefined =>
  measured.ready && measured.topTorque <= (allowedLoad?.load ?? Number.POSITIVE_INFINITY)
    ? measured.topTorque
    : undefined;

/** Verdict, date, thread, grease, wrench or piston and gauge, no-load torque, highest reading, the dial's way; limits where they are not said yet. */
export const CardFacts = part<Props>(({ results, blocks, isOneOfSeveral }, sheet) => {
  const { quantity, load } = sheet.shown();
  const worksheet = sheet.worksheet();
  const top = readUpTo(results);
  const whose = isOneOfSeveral
    ? `, ${shortName(sheet.text('bandName'), ownBandCalled(results))}`
    : '';
  const runsBackwards = worksheet?.rig.dialRunsBackwards ?? results.dialRuns?.backwards;
  const facts = [
    ['Verdict', verdictWords(results, testsLittle(sheet))],
    ...provisional(blocks).map((words) => ['Measure first', words] as const),
    ['Measured on', sheet.text('measuredOn')],
    ...(load.name === 'torque' ? screwFacts(sheet) : cylinderFacts(sheet)),
    ...(top === undefined ? [] : [['Dial read up to', quantity(top, load.name) + whose] as const]),
    ['The dial’s number', dialRunsWords(runsBackwards, slackSeen(results, sheet.shown()))],
    ...(blocks[0]?.limit ? [] : [['The makers allow', ''] as const]),
  ] satisfies readonly Fact[];
  return (
    <dl class="card-facts">
      {facts.map(([name, value], place) => (
        <div key={place}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
});
