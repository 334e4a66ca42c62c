/** The open sheet as its parts see it: whatever a part asks for here, it is drawn again when that changes. */
import { type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import {
  type LoadName,
  loadName,
  type Worksheet,
  type WorksheetResults,
} from '../../core/worksheet.ts';
import type { BoxPath, ChoicePath, FieldPath, ListPath, OptionOf } from '../../form/paths.ts';
import { rowNamer, type SeriesStart, seriesStarts } from '../../form/series.ts';
import type { Aside } from '../../form/set-aside.ts';
import { cellsIn, chosenAt, rowCount, type Typed, typedAt } from '../../form/typed.ts';
import { wrenchHasInchPounds } from '../../form/wrench.ts';
import type { OpenParts } from '../folds/open-parts.ts';
import { PART_IDS, type PartId, partOf } from '../folds/sheet-parts.ts';
import { bodyDoubt, doubtsBesideReadings, refusalsBesideBoxes } from '../words/box-refusals.ts';
import type { Answers } from './answers.ts';
import { lasting, selector } from './lasting.ts';
import { type Command, emptyProject, type Project } from './project.ts';
import type { Reckoning } from './results.ts';
import { type Shown, shownIn } from './shown.ts';

type ByPath = Readonly<Record<string, string>>;

/** What stands beside boxes, by their paths: why one cannot be used, and what is odd about one that is. */
interface Troubles {
  readonly refusals: ByPath;
  readonly doubts: ByPath;
}

/** Something that a box did not take: why, and the text where it is worth copying. */
export interface NotTaken {
  readonly path: string;
  readonly says: string;
  readonly text: string;
}

/** What a part may ask, and do. */
export interface SheetView {
  /** The texts of a list, row by row. */
  readonly cells: (list: ListPath) => readonly (readonly string[])[];
  readonly text: (path: FieldPath) => string;
  readonly chosen: <Path extends ChoicePath>(path: Path) => OptionOf<Path>;
  /** What came with the sheet and could not be read. */
  readonly aside: () => Aside | undefined;
  readonly rows: (list: ListPath) => number;
  /** Whether something is filled in or chosen in a part. */
  readonly isFilled: (id: PartId) => boolean;
  readonly shown: () => Shown;
  /** Where the series of the readings begin. */
  readonly series: () => readonly SeriesStart[];
  readonly troubles: () => Troubles;
  readonly refusal: (path: string) => string | undefined;
  readonly doubt: (path: string) => string | undefined;
  /** One result; undefined on the form as it is built. */
  readonly result: <Name extends keyof WorksheetResults>(
    name: Name,
  ) => WorksheetResults[Name] | undefined;
  readonly results: () => WorksheetResults | undefined;
  readonly worksheet: () => Worksheet | undefined;
  readonly isLive: () => boolean;
  readonly answers: () => Omit<Answers, 'results'>;
  /** Who is asked about more; no one on the form as it is built. */
  readonly asker: Reckoning['asker'] | undefined;
  readonly run: (command: Command) => void;
  /** Which parts stand open; on the form as it is built, all. */
  readonly openParts: OpenParts;
  /** Which blocks of readings the reader has unfolded. */
  readonly unfolded: Signal<ReadonlySet<number>>;
  /** The box of a reading that is open though nothing stands in it. */
  readonly opened: Signal<BoxPath | undefined>;
  /** Whether turns of the screw are wanted beside the readings. */
  readonly withTurns: Signal<boolean>;
  /** Whether a measurement is being planned. */
  readonly isPlanning: Signal<boolean>;
  /** Whether the working of the stress is open, where it is told by trials too. */
  readonly wantsTrials: Signal<boolean>;
  /** What one box did not take, or any. */
  readonly notTaken: (path?: string) => NotTaken | undefined;
  /** Tells what a box did not take, or that it has been seen. */
  readonly tell: (notTaken: NotTaken | undefined) => void;
}

/** Where a view comes from; the form as it is built has no reckoning. */
export interface ViewSource {
  readonly project: ReadonlySignal<Project>;
  readonly reckoning?: Reckoning;
  readonly run?: (command: Command) => void;
  readonly open?: readonly PartId[]; // the parts to begin with
}

/** What tightens the band of a sheet. */
const loadOf = (typed: Typed): LoadName => loadName({ kind: chosenAt(typed, 'tensioner.kind') });

/** The kind of torque that is shown: as the wrench has it. */
const wrenchOf = (typed: Typed) => (wrenchHasInchPounds(typed) ? 'inchTorque' : 'torque');

/** The parts in which something is filled in or chosen. */
function filledIn(typed: Typed): readonly PartId[] {
  const filled = new Set<PartId | undefined>();
  for (const path in typed) filled.add(partOf(path));
  return PART_IDS.filter((id) => filled.has(id));
}

function troublesOf({ project, reckoning }: ViewSource, shown: () => Shown): Troubles {
  if (!reckoning) return { refusals: {}, doubts: {} };
  const results = reckoning.results.value;
  const { refusals, worksheet, ...read } = reckoning.read.value;
  const doubts = { ...bodyDoubt(worksheet), ...read.doubts };
  if (!results) return { refusals, doubts };
  return {
    refusals: { ...refusalsBesideBoxes(results, project.value.typed, shown()), ...refusals },
    doubts: { ...doubtsBesideReadings(results, shown()), ...doubts },
  };
}

/** The view of a sheet. */
export function viewOf(source: ViewSource): SheetView {
  const { project, reckoning, run = () => {}, open = PART_IDS } = source;
  const select = selector();
  const typed = () => project.value.typed;
  const series = () => select('series', () => seriesStarts(typed()));
  const shown = () =>
    shownIn(
      select('system', () => project.value.system),
      select('load', () => loadOf(typed())),
      rowNamer(series()),
      select('wrench', () => wrenchOf(typed())),
    );
  const troubles = lasting(() => troublesOf(source, shown));
  const notTaken = signal<NotTaken | undefined>(undefined);
  /** A note without a text is done with as soon as its box is typed into. */
  const runAndSettle = (command: Command) => {
    const told = notTaken.peek();
    if (told?.text === '' && command.do === 'type' && command.path === told.path)
      notTaken.value = undefined;
    run(command);
  };
  return {
    cells: (list) => select(`cells ${list}`, () => cellsIn(typed(), list)),
    text: (path) => select(`text ${path}`, () => typedAt(typed(), path)),
    chosen: (path) => select(`chosen ${path}`, () => chosenAt(typed(), path)),
    aside: () => select('aside', () => project.value.aside),
    isFilled: (id) => select('filled', () => filledIn(typed())).includes(id),
    rows: (list) => select(`rows ${list}`, () => rowCount(typed(), list)),
    shown,
    series,
    troubles: () => troubles.value,
    refusal: (path) => select(`refusal ${path}`, () => troubles.value.refusals[path]),
    doubt: (path) => select(`doubt ${path}`, () => troubles.value.doubts[path]),
    result: (name) => select(`result ${name}`, () => reckoning?.results.value?.[name]),
    results: () => reckoning?.results.value,
    worksheet: () => select('worksheet', () => reckoning?.read.value.worksheet),
    isLive: () => reckoning !== undefined,
    answers: () => reckoning?.answers ?? {},
    asker: reckoning?.asker,
    run: runAndSettle,
    openParts: signal(new Set(open)),
    unfolded: signal(new Set<number>()),
    opened: signal<BoxPath | undefined>(undefined),
    withTurns: signal(false),
    isPlanning: signal(false),
    wantsTrials: reckoning?.wantsTrials ?? signal(false),
    notTaken: (path) =>
      path === undefined
        ? notTaken.value
        : select(`not taken ${path}`, () =>
            notTaken.value?.path === path ? notTaken.value : undefined,
          ),
    tell: (told) => {
      notTaken.value = told;
    },
  };
}

/** The form as it is built and printed blank. */
export const blankView = viewOf({ project: signal(emptyProject('metric')) });
