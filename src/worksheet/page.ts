/** The worksheet page comes alive: takes sheets off the shelf and out of the link, draws, keeps. */
import { effect, type Signal, signal } from '@preact/signals-core';
import { h, render } from 'preact';
import { readDocument } from '../form/schema.ts';
import { isBlank } from '../form/typed.ts';
import { announceLive } from '../live/announce.ts';
import { unitSystem } from '../live/unit-system.ts';
import { bindCard } from './card/place.ts';
import { openOn } from './folds/open-parts.ts';
import { bindUnfoldingForPrint } from './folds/printing.ts';
import { bindRevealing } from './folds/revealing.ts';
import { fetchAllInsides, fetchInsides } from './insides/late.ts';
import { followOtherTabs } from './io/other-tabs.ts';
import { dropAside } from './io/rescue.ts';
import { Shelf } from './io/shelf.ts';
import { askToStay } from './io/staying.ts';
import { fill } from './keeping/filling.ts';
import type { ReadRecord } from './keeping/keeper.ts';
import { bindLeaving } from './keeping/leaving.ts';
import { takeSketches } from './kit/PartSketch.tsx';
import { SheetGiven } from './kit/part.tsx';
import { Answers } from './parts/Answers.tsx';
import { Desk } from './parts/Desk.tsx';
import { ReachStrip } from './parts/ReachStrip.tsx';
import { Sheet } from './parts/Sheet.tsx';
import { fetchWithFirstTouch, LateStressAnswer } from './results/late.ts';
import {
  type DeskActions,
  deskActions,
  fetchCarriers,
  fetchSharing,
} from './state/desk-actions.ts';
import { drawTogether } from './state/drawing.ts';
import { takeEarlyTyping } from './state/early-typing.ts';
import { bindKeys } from './state/keys.ts';
import { lasting } from './state/lasting.ts';
import { reckon } from './state/results.ts';
import { createSheetStore, projectFrom, run, type SheetStore } from './state/store.ts';
import { bindTaking } from './state/taking.ts';
import { fetchGuardWords } from './state/told-guards.ts';
import { bindUndo, fetchUndoWords } from './state/undo.ts';
import { type SheetView, viewOf } from './state/view.ts';
import { NOTICES } from './words/notices.ts';

const SLOW = 3000; // ms

/** The places that the page was built with. */
interface Places {
  readonly sheet: HTMLElement;
  readonly desk: HTMLElement;
  readonly card: HTMLElement;
  readonly answers: HTMLElement;
  readonly strip: HTMLElement;
  readonly cardFold: HTMLDetailsElement;
}

function placesOf(page: Document): Places | undefined {
  const [sheet, desk, card, answers, strip] = ['sheet', 'desk', 'card', 'answers', 'strip'].map(
    (name) => page.querySelector<HTMLElement>(`[data-worksheet="${name}"]`),
  );
  const cardFold = card?.closest('details');
  return sheet && desk && card && answers && strip && cardFold
    ? { sheet, desk, card, answers, strip, cardFold }
    : undefined;
}

function drawSheet(store: SheetStore, { sheet, answers, strip }: Places): SheetView {
  takeSketches(sheet);
  const reckoning = reckon(store.project);
  const value = viewOf({
    project: store.project,
    reckoning,
    run: drawTogether(sheet.ownerDocument, reckoning.isBehind, (command) => run(store, command)),
    open: openOn(sheet),
  });
  render(h(SheetGiven, { value }, h(Sheet, {})), sheet);
  render(h(SheetGiven, { value }, h(Answers, {})), answers);
  render(h(SheetGiven, { value }, h(ReachStrip, {})), strip);
  bindKeys(sheet, value);
  bindTaking(sheet, value);
  bindUnfoldingForPrint(sheet, value);
  effect(() => {
    if (reckoning.isBehind.value) sheet.setAttribute('aria-busy', 'true');
    else sheet.removeAttribute('aria-busy');
    if (reckoning.results.value) answers.toggleAttribute('data-there', true); // from now on they are seen
  });
  return value;
}

function drawDesk(store: SheetStore, actions: DeskActions, desk: HTMLElement): void {
  desk.replaceChildren(); // what was built stood only for the room that it takes
  const view = lasting(() => {
    const { past, future, present } = store.history.value;
    return {
      act: actions,
      id: store.id.value,
      kept: store.kept.value,
      isBlank: isBlank(present.typed),
      savedAt: store.keeper.savedAt.value.get(store.id.value),
      notKept: [...store.keeper.refused.value].map(
        (id) => store.kept.value.find((each) => each.id === id)?.label ?? '',
      ),
      versions: actions.versions.value,
      Keeping: actions.keeping.value,
      bin: store.bin.value,
      unread: store.unread.value.length,
      notice: actions.said.value,
      spoken: actions.spoken.value,
      removed: actions.removed.value,
      canUndo: past.length > 0,
      canRedo: future.length > 0,
      Sharing: actions.sharing.value,
      examples: actions.exampleNames(present.system),
    };
  });
  effect(() => render(h(Desk, { view: view.value }), desk));
}

/** How a store reads what lies on its shelf: into the units that are chosen now. */
const readRecord: ReadRecord = ({ document }) => {
  const read = readDocument(document);
  return typeof read === 'string' ? undefined : projectFrom(read.document, unitSystem.peek());
};

/** A store on this browser's shelf, which tells the other tabs and hears from them. */
function openStore(said: Signal<string>): SheetStore {
  const tell = followOtherTabs(() => store, said);
  const store = createSheetStore(new Shelf(), unitSystem.value, readRecord, (id, isMerged) => {
    if (isMerged) said.value = NOTICES.followed;
    askToStay();
    dropAside(id);
    tell(id);
  });
  return store;
}

/** Takes in what is kept; a browser that does not open its storage does not keep the page from starting. */
async function filled(store: SheetStore, said: Signal<string>): Promise<void> {
  const slow = setTimeout(() => {
    said.value = NOTICES.slowStorage;
  }, SLOW);
  const filling = fill(store, said).finally(() => clearTimeout(slow));
  await Promise.race([filling, new Promise((resolve) => setTimeout(resolve, SLOW))]);
}

/** Starts the page; a page without its places stays the page that was built. */
export async function startWorksheet(page: Document): Promise<void> {
  const places = placesOf(page);
  if (!places) return;
  const said = signal('');
  const store = openStore(said);
  await filled(store, said);
  if (takeEarlyTyping(store, places.sheet)) said.value = NOTICES.earlyTyping;
  unitSystem.subscribe((system) => run(store, { do: 'units', system }));
  await fetchInsides(openOn(places.sheet));
  if (!isBlank(store.project.value.typed))
    await Promise.all([LateStressAnswer.fetch(), fetchGuardWords()]); // or the answers would move
  const view = drawSheet(store, places);
  const actions = deskActions(store, said, page, view);
  const { project } = store;
  const wholeCard = bindCard(places.cardFold, places.card, { view, project, link: actions.link });
  drawDesk(store, actions, places.desk);
  const fetchByKeyboard = async () =>
    (await import('./state/by-keyboard.ts')).bindByKeyboard(page, actions.spoken);
  fetchWithFirstTouch(
    page,
    fetchAllInsides,
    fetchCarriers,
    fetchSharing,
    fetchUndoWords,
    fetchGuardWords,
    fetchByKeyboard,
  );
  bindUndo(store, actions.spoken, page);
  bindRevealing(page, view);
  bindLeaving(store.keeper, page);
  page
    .getElementById('print-card')
    ?.addEventListener(
      'click',
      () => void wholeCard().then((isWhole) => isWhole && actions.print('card')),
    );
  await actions.takeLink();
  addEventListener('hashchange', () => void actions.takeLink());
  announceLive();
}
