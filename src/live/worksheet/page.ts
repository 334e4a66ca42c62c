/** The worksheet page comes alive: takes sheets off the shelf and out of the link, draws, keeps. */
import { effect, type Signal, signal } from '@preact/signals-core';
import { h, render } from 'preact';
import { withChoice, withPasted, withTyped } from '../../models/worksheet/edits.ts';
import { isBlankText } from '../../models/worksheet/text.ts';
import { announceLive } from '../announce.ts';
import { unitSystem } from '../unit-system.ts';
import { doubtsBesideReadings, refusalsBesideBoxes } from './box-refusals.ts';
import { keepChart } from './chart-keeper.ts';
import { Desk } from './Desk.tsx';
import { type DeskActions, deskActions } from './desk-actions.ts';
import { bindKeys } from './keys.ts';
import { followOtherTabs } from './other-tabs.ts';
import { SettingCard } from './SettingCard.tsx';
import { Sheet } from './Sheet.tsx';
import { changeUnits, createSheetStore, edit, openSheet, type SheetStore } from './sheet-store.ts';
import { setSheetView } from './sheet-view.ts';
import { Shelf } from './shelf.ts';
import { shownIn } from './shown.ts';
import { keepTrials } from './trials-keeper.ts';

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
  const { fromShelf } = await import('./outside.ts');
  const { sheets, unread } = await fromShelf(entries);
  for (const [id, document] of sheets) store.documents.set(id, document);
  const open = store.shelf.openId() ?? '';
  const first = sheets.has(open) ? open : [...sheets.keys()][0];
  if (first !== undefined) openSheet(store, first);
  if (unread === 0) return;
  const { unreadableNotice } = await import('./refusal-notices.ts');
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
  keepChart(store, places.sheet);
  followOtherTabs(store);
  await actions.takeLink();
  addEventListener('hashchange', () => void actions.takeLink());
  announceLive();
}
