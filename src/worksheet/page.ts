/** The worksheet page comes alive: takes sheets off the shelf and out of the link, draws, keeps. */
import { effect, type Signal, signal } from '@preact/signals-core';
import { h, render } from 'preact';
import { withChoice, withPasted, withTyped } from '../form/edits.ts';
import { isBlankText } from '../form/text.ts';
import { announceLive } from '../live/announce.ts';
import { unitSystem } from '../live/unit-system.ts';
import { followOtherTabs } from './io/other-tabs.ts';
import { Shelf } from './io/shelf.ts';
import { Desk } from './parts/Desk.tsx';
import { SettingCard } from './parts/SettingCard.tsx';
import { Sheet } from './parts/Sheet.tsx';
import { type DeskActions, deskActions } from './state/desk-actions.ts';
import { bindKeys } from './state/keys.ts';
import { shownIn } from './state/shown.ts';
import { changeUnits, createSheetStore, edit, openSheet, type SheetStore } from './state/store.ts';
import { keepTrials } from './state/trials-keeper.ts';
import { setSheetView } from './state/view.ts';
import { doubtsBesideReadings, refusalsBesideBoxes } from './words/box-refusals.ts';

/** The places that the page was built with. */
interface Places {
  readonly sheet: HTMLElement;
  readonly desk: HTMLElement;
  readonly card: HTMLElement;
}

function placesOf(page: Document): Places | undefined {
  const [sheet, desk, card] = ['sheet', 'desk', 'card'].map((name) =>
    page.querySelector<HTMLElement>(`[data-worksheet="${name}"]`),
  );
  return sheet && desk && card ? { sheet, desk, card } : undefined;
}

function drawSheet(store: SheetStore, { sheet, card }: Places): void {
  const trials = keepTrials(store);
  effect(() => {
    const { worksheet, refusals, doubts } = store.read.value;
    const shown = shownIn(store.system.value);
    const results = store.results.value;
    setSheetView({
      text: store.text.value,
      shown,
      worksheet,
      results,
      trials: trials.value,
      refusals: { ...refusalsBesideBoxes(results, store.text.value, shown), ...refusals },
      doubts: { ...doubtsBesideReadings(results, shown), ...doubts },
      type: (path, typed) => edit(store, (text) => withTyped(text, path, typed)),
      choose: (name, chosen) => edit(store, (text) => withChoice(text, name, chosen)),
      paste: (place, column, cells) =>
        edit(store, (text) => withPasted(text, place, column, cells)),
    });
    render(h(Sheet, {}), sheet);
    render(h(SettingCard, {}), card);
  });
}

function drawDesk(store: SheetStore, actions: DeskActions, desk: HTMLElement): void {
  effect(() => {
    const view = {
      ...actions,
      id: store.id.value,
      kept: store.kept.value,
      isBlank: isBlankText(store.text.value),
      notKept: store.notKept.value,
      notice: actions.said.value,
      canUndo: actions.removed.value !== undefined,
      link: actions.shownLink.value,
      examples: actions.exampleNames(store.system.value),
    };
    render(h(Desk, { view }), desk);
  });
}

async function fill(store: SheetStore, said: Signal<string>): Promise<void> {
  const entries = store.shelf.entries();
  if (entries.length === 0) return;
  const { fromShelf } = await import('./io/outside.ts');
  const { sheets, unread } = await fromShelf(entries);
  for (const [id, document] of sheets) store.documents.set(id, document);
  const open = store.shelf.openId() ?? '';
  const first = sheets.has(open) ? open : [...sheets.keys()][0];
  if (first !== undefined) openSheet(store, first);
  if (unread === 0) return;
  const { unreadableNotice } = await import('./words/refusal-notices.ts');
  said.value = unreadableNotice(unread);
}

/** Starts the page; a page without its places stays the page that was built. */
export async function startWorksheet(page: Document): Promise<void> {
  const places = placesOf(page);
  if (!places) return;
  const store = createSheetStore(new Shelf(), unitSystem);
  const said = signal('');
  const actions = deskActions(store, said, page);
  await fill(store, said);
  let was = unitSystem.value;
  unitSystem.subscribe((system) => {
    changeUnits(store, was);
    was = system;
  });
  drawSheet(store, places);
  drawDesk(store, actions, places.desk);
  bindKeys(places.sheet);
  page.getElementById('print-card')?.addEventListener('click', () => actions.print('card'));
  followOtherTabs(store);
  await actions.takeLink();
  addEventListener('hashchange', () => void actions.takeLink());
  announceLive();
}
