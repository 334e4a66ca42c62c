/** The worksheet page comes alive: takes sheets off the shelf and out of the link, draws, keeps. */
import { effect, type Signal, signal } from '@preact/signals-core';
import { h, render } from 'preact';
import { isBlank } from '../form/typed.ts';
import { announceLive } from '../live/announce.ts';
import { unitSystem } from '../live/unit-system.ts';
import { followOtherTabs } from './io/other-tabs.ts';
import { fromShelf } from './io/outside.ts';
import { Shelf } from './io/shelf.ts';
import { SheetGiven } from './kit/part.tsx';
import { Desk } from './parts/Desk.tsx';
import { SettingCard } from './parts/SettingCard.tsx';
import { Sheet } from './parts/Sheet.tsx';
import { bindUnfoldingForPrint } from './state/blocks.ts';
import { type DeskActions, deskActions } from './state/desk-actions.ts';
import { takeEarlyTyping } from './state/early-typing.ts';
import { bindKeys } from './state/keys.ts';
import { reckon } from './state/results.ts';
import { createSheetStore, openSheet, run, type SheetStore } from './state/store.ts';
import { bindTaking } from './state/taking.ts';
import { bindUndo } from './state/undo.ts';
import { viewOf } from './state/view.ts';
import { NOTICES } from './words/notices.ts';
import { unreadableNotice } from './words/refusal-notices.ts';

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
  const reckoning = reckon(store.project);
  const value = viewOf({
    project: store.project,
    reckoning,
    run: (command) => run(store, command),
  });
  render(h(SheetGiven, { value }, h(Sheet, {})), sheet);
  render(h(SheetGiven, { value }, h(SettingCard, {})), card);
  bindKeys(sheet, value);
  bindTaking(sheet, value);
  bindUnfoldingForPrint(value);
  effect(() => {
    if (reckoning.isBehind.value) sheet.setAttribute('aria-busy', 'true');
    else sheet.removeAttribute('aria-busy');
  });
}

function drawDesk(store: SheetStore, actions: DeskActions, desk: HTMLElement): void {
  desk.replaceChildren(); // what was built stood only for the room that it takes
  effect(() => {
    const { past, future, present } = store.history.value;
    const view = {
      act: actions,
      id: store.id.value,
      kept: store.kept.value,
      isBlank: isBlank(present.typed),
      notKept: store.notKept.value,
      notice: actions.said.value,
      spoken: actions.spoken.value,
      canPutBack: actions.removed.value !== undefined,
      canUndo: past.length > 0,
      canRedo: future.length > 0,
      link: actions.shownLink.value,
      examples: actions.exampleNames(present.system),
    };
    render(h(Desk, { view }), desk);
  });
}

function fill(store: SheetStore, said: Signal<string>): void {
  const { sheets, unread } = fromShelf(store.shelf.entries());
  for (const [id, document] of sheets) store.documents.set(id, document);
  const open = store.shelf.openId() ?? '';
  const first = sheets.has(open) ? open : [...sheets.keys()][0];
  if (first !== undefined) openSheet(store, first);
  if (unread.length > 0) said.value = unreadableNotice(unread.length);
}

/** Starts the page; a page without its places stays the page that was built. */
export async function startWorksheet(page: Document): Promise<void> {
  const places = placesOf(page);
  if (!places) return;
  const store = createSheetStore(new Shelf(), unitSystem.value);
  const said = signal('');
  const actions = deskActions(store, said, page);
  fill(store, said);
  if (takeEarlyTyping(store, places.sheet)) said.value = NOTICES.earlyTyping;
  unitSystem.subscribe((system) => run(store, { do: 'units', system }));
  drawSheet(store, places);
  drawDesk(store, actions, places.desk);
  bindUndo(store, actions.spoken, page);
  page.getElementById('print-card')?.addEventListener('click', () => actions.print('card'));
  followOtherTabs(store, said);
  await actions.takeLink();
  addEventListener('hashchange', () => void actions.takeLink());
  announceLive();
}
