/** What the desk does: sheets in and out as link, file, example, print. */
import { type Signal, signal } from '@preact/signals-core';
import type { WorksheetDocument } from '../../form/document.ts';
import { type DocumentRefusal, readDocument } from '../../form/schema.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { printOnly } from '../folds/printing.ts';
import { PLAN, placeOf } from '../folds/revealing.ts';
import type { VersionRecord } from '../io/database.ts';
import type { Brought } from '../io/outside.ts';
import { documentFrom } from '../keeping/keeper.ts';
import type { DeskActs, DeskView } from '../parts/Desk.tsx';
import { NOTICES } from '../words/notices.ts';
import { examplesIn } from './examples.ts';
import { unitsAreRemembered } from './remembered-units.ts';
import {
  addSheet,
  copyOpen,
  forget,
  newSheet,
  openSheet,
  putBack,
  removeOpen,
  run,
  type SheetStore,
} from './store.ts';
import { go } from './undo.ts';
import type { SheetView } from './view.ts';

/** The rooms behind the fold of what is kept: fetched when it is opened. */
const fetchKept = () => import('../keeping/fold.ts');
type Kept = Awaited<ReturnType<typeof fetchKept>>;

/** What carries sheets in and out. */
export const fetchCarriers = () => import('../io/carriers.ts');
type Carriers = Awaited<ReturnType<typeof fetchCarriers>>;

/** What there is to share of a sheet. */
export const fetchSharing = () => import('../sharing/sheet-panel.tsx');

/** The desk's actions, with what it has to tell. */
export interface DeskActions extends DeskActs {
  readonly said: Signal<string>;
  readonly spoken: Signal<string>; // told to who listens, not shown
  readonly removed: Signal<string | undefined>; // the sheet that was deleted last, by its id
  readonly versions: Signal<readonly VersionRecord[]>;
  readonly keeping: Signal<DeskView['Keeping']>;
  readonly sharing: Signal<DeskView['Sharing']>;
  readonly link: () => Promise<string | undefined>; // of the open sheet; undefined where it is too long
  readonly takeLink: () => Promise<void>;
  readonly exampleNames: (system: UnitSystem) => readonly string[];
}

/** A reader who has never chosen units sees a sheet from outside in its own. */
function adoptUnits(page: Document, document: WorksheetDocument): void {
  if (unitsAreRemembered()) return;
  const system = document.units['torque'] === 'ft·lbf' ? 'us' : 'metric';
  page.querySelector<HTMLInputElement>(`#units-${system}`)?.click();
}

/** The actions on a store; `said` is what the desk tells last, `view` the open sheet. */
export function deskActions(
  store: SheetStore,
  said: Signal<string>,
  page: Document,
  view: SheetView,
): DeskActions {
  const removed = signal<string | undefined>(undefined);
  const versions = signal<readonly VersionRecord[]>([]);
  const keeping = signal<DeskView['Keeping']>(undefined);
  const withKept = (act: (kept: Kept) => void | Promise<void>) =>
    fetchKept().then(act, () => fresh(NOTICES.notArrived));
  const withCarriers = (act: (carriers: Carriers) => Promise<void>) =>
    fetchCarriers().then(act, () => fresh(NOTICES.notArrived));
  const sharing = signal<DeskView['Sharing']>(undefined);
  const spoken = signal('');
  const examples = examplesIn(page);
  const fitting = (system: UnitSystem) =>
    [...examples].sort((a) =>
      a.units['torque'] === (system === 'us' ? 'ft·lbf' : 'N·m') ? -1 : 1,
    );
  const fresh = (notice: string) => {
    said.value = notice;
    sharing.value = undefined;
    removed.value = undefined;
    versions.value = [];
  };
  const arrive = (
    { arrivalNotice, refusalNotice }: Carriers,
    what: 'link' | 'file',
    arrival: Brought | DocumentRefusal,
  ) => {
    if (typeof arrival === 'string') return fresh(refusalNotice(what, arrival));
    addSheet(store, arrival.document);
    fresh(arrivalNotice(what, arrival));
  };
  const link = async () => {
    const { origin, pathname } = page.location;
    const { LONGEST_LINK, packed } = await fetchCarriers();
    const fragment = await packed(documentFrom(store.project.value));
    return fragment.length > LONGEST_LINK ? undefined : `${origin}${pathname}#${fragment}`;
  };
  return {
    said,
    spoken,
    removed,
    versions,
    keeping,
    sharing,
    link,
    open: (id) => {
      openSheet(store, id);
      fresh('');
    },
    add: () => {
      newSheet(store);
      fresh('');
      page.getElementById('box-label')?.focus();
    },
    copy: () => {
      copyOpen(store);
      fresh(NOTICES.sheetCopied);
      page.getElementById('box-label')?.focus();
    },
    remove: () => {
      const id = store.id.value;
      removeOpen(store, Date.now());
      fresh(NOTICES.removed);
      removed.value = store.bin.value.find((each) => each.id === id)?.id;
    },
    putBack: (id) => {
      putBack(store, id);
      fresh('');
    },
    forget: async (id) => {
      const isGone = await forget(store, id).then(
        () => true,
        () => false,
      );
      fresh(isGone ? '' : NOTICES.notForgotten);
    },
    lookUpKept: async () => {
      versions.value = await store.shelf.versions(store.id.value).catch(() => []);
      await withKept(({ Keeping }) => {
        keeping.value = Keeping;
      });
    },
    takeVersion: (savedAt) => {
      const version = versions.value.find((each) => each.savedAt === savedAt);
      const read = version && readDocument(version.document);
      if (!read || typeof read === 'string') return fresh(NOTICES.versionGone);
      run(store, { do: 'load', document: read.document });
      said.value = NOTICES.versionTaken;
    },
    undo: () => go(store, spoken, page, 'undo'),
    redo: () => go(store, spoken, page, 'redo'),
    share: () => {
      const isOpen = sharing.value !== undefined;
      fresh('');
      if (isOpen) return;
      fetchSharing().then(
        ({ sheetPanel }) => {
          sharing.value = sheetPanel({ link, view, page }, () => store.project.value);
        },
        () => fresh(NOTICES.notArrived),
      );
    },
    saveFile: () =>
      withCarriers(async ({ download, fileName, sealed }) => {
        const sheet = documentFrom(store.project.value);
        download(page, fileName(sheet.typed['label'] ?? ''), await sealed({ sheet }));
        fresh(NOTICES.fileSaved);
      }),
    saveAll: () =>
      withCarriers(({ backupName, download, sealed }) =>
        withKept(async ({ backupOf }) => {
          download(page, backupName(new Date()), await sealed({ sheets: backupOf(store) }));
          fresh(NOTICES.backupSaved);
        }),
      ),
    saveUnread: () =>
      withCarriers(async ({ download }) =>
        download(page, 'not-readable.json', JSON.stringify(store.unread.value, null, 2)),
      ),
    openFile: (file) =>
      withCarriers(async (carriers) => {
        const arrival = await carriers.fromFile(file);
        if (typeof arrival === 'string' || 'document' in arrival)
          return arrive(carriers, 'file', arrival);
        await withKept(async ({ takeBackup, backupSentence }) =>
          fresh(backupSentence(await takeBackup(store, arrival.sheets))),
        );
      }),
    example: (place) => {
      const document = fitting(store.project.value.system)[place];
      if (!document) return;
      addSheet(store, document);
      fresh(NOTICES.exampleOpened);
    },
    print: (what) => printOnly(page, what),
    takeLink: async () => {
      const { hash } = page.location;
      if (hash === '' || hash === PLAN || placeOf(page, hash)) return;
      await withCarriers(async (carriers) => {
        const arrival = await carriers.fromLink(hash);
        if (typeof arrival === 'string') return arrive(carriers, 'link', arrival);
        adoptUnits(page, arrival.document);
        history.replaceState(null, '', page.location.pathname + page.location.search);
        arrive(carriers, 'link', arrival);
        page.getElementById('answers')?.scrollIntoView(); // who is sent a sheet wants to know what to set
      });
    },
    exampleNames: (system) => fitting(system).map(({ typed }) => typed['label'] ?? ''),
  };
}
