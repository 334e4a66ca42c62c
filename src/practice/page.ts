/** The bench comes alive: takes the mill out of the link or off the shelf, draws, keeps what is done. */
import { effect, type Signal, signal } from '@preact/signals-core';
import { type ComponentType, h, render } from 'preact';
import { announceLive } from '../live/announce.ts';
import { NOT_ARRIVED } from '../live/fetched-later.ts';
import { unitSystem } from '../live/unit-system.ts';
import { Desk } from './parts/Desk.tsx';
import type { DeskProps } from './parts/desk.ts';
import { type Press, pressed } from './state/actions.ts';
import {
  type Address,
  addressOf,
  FIRST_PLACE,
  fragmentOf,
  type Place,
  readAddress,
} from './state/address.ts';
import { apply, type Bench, type Command, freshBench } from './state/bench.ts';
import type { BoxName } from './state/boxes.ts';
import { keepBench, keptBench, lastPlace, restoreShelf } from './state/kept.ts';
import { type View, viewOf } from './state/view.ts';

type LidPart = ComponentType<{ readonly view: View }>;
type PluckPart = ComponentType<{ readonly desk: DeskProps }>;

/** What the page holds. */
interface Store {
  readonly bench: Signal<Bench>;
  readonly said: Signal<string>;
  readonly notice: Signal<string>;
  readonly beside: Signal<string>;
  readonly refusals: Signal<Readonly<Partial<Record<BoxName, string>>>>;
  readonly isTeachers: Signal<boolean>;
  readonly lid: Signal<LidPart | undefined>;
  readonly pluck: Signal<PluckPart | undefined>;
}

const NOT_KEPT =
  'This browser keeps nothing: your rows are gone when you close the page. Print them, or carry them into the worksheet.';

const told = (refused: readonly string[], { seed }: Place) =>
  refused.length === 0
    ? ''
    : `Part of the link could not be used: ${refused.join(', ').slice(0, 200)}. Mill ${seed} is on the bench.`;

/** The bench of a mill, its bare numbers brought to the units of today. */
const benchAt = (place: Place): Bench =>
  apply(keptBench(place, unitSystem.peek()), { do: 'units', system: unitSystem.peek() });

function createStore({ place, isTeachers, refused }: Address): Store {
  const there = place ?? lastPlace() ?? FIRST_PLACE;
  return {
    bench: signal(benchAt(there)),
    said: signal(''),
    notice: signal(told(refused, there)),
    beside: signal(''),
    refusals: signal({}),
    isTeachers: signal(isTeachers),
    lid: signal(undefined),
    pluck: signal(undefined),
  };
}

function run({ bench, refusals }: Store, command: Command): void {
  if (command.do === 'type') {
    const { [command.box]: _, ...others } = refusals.peek();
    refusals.value = others;
  }
  bench.value = apply(bench.peek(), command);
}

function press(store: Store, what: Press): void {
  const { command, says = '', refusal } = pressed(viewOf(store.bench.peek()), what);
  store.refusals.value = refusal ? { [refusal.box]: refusal.says } : {};
  store.said.value = says;
  if (command) run(store, command);
}

/** Writes the mill into the address, without a new entry in the history. */
function writeAddress(store: Store): void {
  const lid = store.isTeachers.peek() ? '&lid=open' : '';
  history.replaceState(null, '', `#${fragmentOf(store.bench.peek())}${lid}`);
}

function open(store: Store, place: Place, isFresh = false): void {
  store.isTeachers.value = false;
  store.refusals.value = {};
  store.notice.value = store.beside.value = '';
  store.said.value = `Mill ${place.seed} is on the bench.`;
  store.bench.value = isFresh
    ? freshBench(place.seed, place.level, unitSystem.peek())
    : benchAt(place);
  writeAddress(store);
}

/** Copies the link to a mill, which need not be the one on the bench, and says which. */
async function copy({ beside }: Store, place: Place, lid: string): Promise<void> {
  const address = addressOf(place) + lid;
  try {
    await navigator.clipboard.writeText(address);
    beside.value = `The link to mill ${place.seed} is copied.`;
  } catch {
    beside.value = `Copy it from here: ${address}`;
  }
}

/** Opens the rows on the worksheet, by its own link. */
async function carry(store: Store, base: string): Promise<void> {
  try {
    const { carriedFragment } = await import('./state/carrying.ts');
    location.assign(`${base}worksheet/#${await carriedFragment(viewOf(store.bench.peek()))}`);
  } catch {
    store.said.value = NOT_ARRIVED;
  }
}

/** Fetches a part, and tells where it does not arrive; the next time it is wanted it is asked for again. */
async function fetchPart<Part>(
  { said }: Store,
  place: Signal<Part | undefined>,
  load: () => Promise<Part>,
): Promise<void> {
  try {
    place.value ??= await load();
  } catch {
    said.value = NOT_ARRIVED;
  }
}

/** Fetches what is under the lid once it is wanted. */
function fetchLid(store: Store): void {
  effect(() => {
    if (store.bench.value.isLifted || store.isTeachers.value)
      void fetchPart(store, store.lid, () => import('./lid/Lid.tsx').then(({ Lid }) => Lid));
  });
}

const fetchPluck = (store: Store) =>
  fetchPart(store, store.pluck, () => import('./tries/Pluck.tsx').then(({ Pluck }) => Pluck));

/** Keeps every change, and tells once where nothing is kept. */
function keepChanges({ bench, notice }: Store): void {
  const opened = bench.peek();
  effect(() => {
    if (bench.value !== opened && !keepBench(bench.value)) notice.value = NOT_KEPT;
  });
}

function draw(store: Store, place: HTMLElement, base: string): void {
  effect(() => {
    const desk = {
      view: viewOf(store.bench.value),
      run: (command: Command) => run(store, command),
      press: (what: Press) => press(store, what),
      said: store.said.value,
      refusals: store.refusals.value,
    };
    const whole = {
      desk,
      Lid: store.lid.value,
      Pluck: store.pluck.value,
      wantPluck: () => void fetchPluck(store),
      isTeachers: store.isTeachers.value,
      notice: store.notice.value,
      open: (to: Place, isFresh?: boolean) => open(store, to, isFresh),
      copy: (to: Place, lid = '') => void copy(store, to, lid),
      tell: (says: string) => {
        store.beside.value = says;
      },
      beside: store.beside.value,
      carry: () => void carry(store, base),
    };
    render(h(Desk, whole), place);
  });
}

/** Follows a link that is typed into the address of the open page. */
function followAddress(store: Store): void {
  addEventListener('hashchange', () => {
    const { place, isTeachers, refused } = readAddress(location.hash);
    if (!place) return;
    open(store, place);
    store.isTeachers.value = isTeachers;
    store.notice.value = told(refused, place);
    writeAddress(store);
  });
}

/** Starts the page; a page without its place stays the page that was built. */
export async function startBench(page: Document): Promise<void> {
  const place = page.querySelector<HTMLElement>('[data-bench]');
  if (!place) return;
  await restoreShelf();
  const store = createStore(readAddress(location.hash));
  writeAddress(store);
  place.replaceChildren();
  unitSystem.subscribe((system) => run(store, { do: 'units', system }));
  fetchLid(store);
  keepChanges(store);
  draw(store, place, page.body.dataset['base'] ?? '/');
  followAddress(store);
  announceLive();
}
