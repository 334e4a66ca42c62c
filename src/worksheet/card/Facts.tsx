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
import { type CardBand, isForSetting } from './settings.ts';
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

/** How well the torques are known that may be set; of a rough one that stands beside it. They are so far from the numerals lest they read as what is allowed. */
const knownTo = (blocks: readonly CardBand[]): string =>
  blocks
    .flatMap(({ name, setting }, place) =>
      setting && isForSetting(setting) && setting.trust !== 'rough'
        ? [`${place === 0 ? '' : `${shortName(name, `band ${place + 1}`)} `}±\u00a0${setting.off}`]
        : [],
    )
    .join(', ');

/** Up to where each band is to be measured whose torque is provisional. */
const provisional = (blocks: readonly CardBand[]): readonly string[] =>
  blocks.flatMap(({ name, setting }, place) => {
    if (setting?.trust !== 'provisional') return [];
    const { torque, inOtherUnit } = setting;
    const whose = place === 0 ? '' : `${shortName(name, `band ${place + 1}`)} `;
    return [`measure ${whose}up to ${torque}${inOtherUnit ? ` or ${inOtherUnit}` : ''} first`];
  });

/** What is asked of the screw elsewhere on the sheet fills a box of words that is empty. */
const screwFacts = (sheet: SheetView): readonly Fact[] => [
  [
    'Thread, grease',
    [sheet.text('tensioner.thread.designation'), sheet.text('grease') || greaseWords(sheet)]
      .filter(Boolean)
      .join(', '),
  ],
  ['Wrench', sheet.text('wrench') || wrenchWords(tensionerOf(sheet), sheet.shown())],
  ['No-load torque', counted(said(tensionerOf(sheet)?.dragTorque, 'torque', sheet))],
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
    ['No-load pressure', counted(said(noLoadPressure, 'pressure', sheet))],
  ];
}

/** Date, thread, grease, wrench or piston and gauge, no-load torque, highest reading, the dial's way; how sure and limits where they are not said yet. */
export const CardFacts = part<Props>(({ results, blocks, isOneOfSeveral }, sheet) => {
  const { quantity, load } = sheet.shown();
  const { measured, dialRuns } = results;
  const worksheet = sheet.worksheet();
  const [{ setting: own, limit } = { setting: undefined, limit: undefined }] = blocks;
  const known = knownTo(blocks);
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
    ...(known === '' ? [] : [[`${load.title} known to, 95 %`, known] as const]),
    ...provisional(blocks).map((words) => ['Provisional', words] as const),
    ['Measured on', sheet.text('measuredOn')],
    ...(load.name === 'torque' ? screwFacts(sheet) : cylinderFacts(sheet)),
    ['Dial read up to', measured.ready ? quantity(measured.topTorque, load.name) + whose : ''],
    ['The dial’s number', dialRunsWords(runsBackwards, slackSeen(results, sheet.shown()))],
    ...(limit ? [] : [['The makers allow', ''] as const]),
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
