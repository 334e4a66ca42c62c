/** The page of problem sheets comes alive: reads the link, draws the controls, and draws the sheets as they are chosen. */
import { effect, type Signal, signal } from '@preact/signals-core';
import { h, render } from 'preact';
import { announceLive } from '../../live/announce.ts';
import { NOT_ARRIVED } from '../../live/fetched-later.ts';
import { unitSystem } from '../../live/unit-system.ts';
import { Controls } from './Controls.tsx';
import { fragmentOf, LIMITS, type SheetChoices, startingChoices } from './choices.ts';
import { drawnSheet, type LessonQuestions, questionsAsked } from './drawn.ts';
import { fetchModels } from './models.ts';
import { Paper, type PaperView } from './Paper.tsx';
import { remarksOn } from './remarks.ts';
import { createSheetState, type SheetState, takeLink } from './state.ts';

/** The places that the page was built with. */
interface Places {
  readonly controls: HTMLElement;
  readonly paper: HTMLElement;
  readonly built: readonly HTMLElement[];
  readonly status: HTMLElement;
}

function placesOf(page: Document): Places | undefined {
  const place = (name: string) => page.querySelector<HTMLElement>(`[data-sheets="${name}"]`);
  const [controls, paper, status] = ['controls', 'paper', 'status'].map(place);
  const built = [...page.querySelectorAll<HTMLElement>('[data-sheets="built"]')];
  return controls && paper && status ? { controls, paper, built, status } : undefined;
}

function lessonsOf(page: Document): readonly LessonQuestions[] {
  const text = page.getElementById('questions')?.textContent ?? '[]';
  return JSON.parse(text) as readonly LessonQuestions[]; // written by the build
}

/** The sheets of a set, drawn. */
async function paperFor(
  choices: SheetChoices,
  lessons: readonly LessonQuestions[],
): Promise<PaperView> {
  const chosen = lessons.filter(({ slug }) => choices.lessons.includes(slug));
  const models = await fetchModels();
  const asked = questionsAsked(chosen, choices.questions);
  const sheets = Array.from({ length: choices.variants }, (_, place) =>
    drawnSheet(asked, models, choices.seed + place, choices.units),
  );
  return { sheets, perPage: choices.perPage, print: choices.print };
}

/** Draws whatever is chosen last; what the build drew stays until something else is chosen. */
function drawAsChosen(
  { all, choices }: SheetState,
  lessons: readonly LessonQuestions[],
  drawn: Signal<PaperView | undefined>,
  say: (words: string) => void,
): void {
  let newest = 0;
  effect(() => {
    const wanted = choices.value;
    if (!wanted) return;
    const built = fragmentOf(startingChoices(all, unitSystem.value));
    if (!drawn.peek() && newest === 0 && fragmentOf(wanted) === built) return;
    newest += 1;
    const own = newest;
    const isNewest = () => own === newest;
    paperFor(wanted, lessons).then(
      (paper) => {
        if (!isNewest()) return;
        drawn.value = paper;
        say(remarksOn(paper.sheets, wanted.questions));
      },
      () => isNewest() && say(NOT_ARRIVED),
    );
  });
}

function keepAddress({ all, choices }: SheetState, address: Signal<string>): void {
  effect(() => {
    const start = fragmentOf(startingChoices(all, unitSystem.value));
    const now = choices.value && fragmentOf(choices.value);
    const bare = location.pathname + location.search;
    address.value = `${location.origin}${bare}#${now ?? start}`;
    const isLink = location.hash.startsWith('#v=');
    if (now && (isLink || now !== start)) history.replaceState(null, '', `${bare}#${now}`);
  });
}

function followUnits({ rest }: SheetState): void {
  unitSystem.subscribe((units) => {
    if (units !== rest.peek().units) rest.value = { ...rest.peek(), units };
  });
}

/** Starts the page; a page without its places stays the page that was built. */
export function startSheets(page: Document): void {
  const places = placesOf(page);
  if (!places) return;
  const lessons = lessonsOf(page);
  const all = lessons.map(({ slug }) => slug);
  const state = createSheetState(all, unitSystem.peek());
  const [address, drawn] = [signal(''), signal<PaperView | undefined>(undefined)];
  const otherNumbers = () => {
    const seed = String(1 + Math.floor(Math.random() * LIMITS.seed.most));
    state.texts.value = { ...state.texts.value, seed };
  };
  followUnits(state);
  const open = () => takeLink(state, location.hash, unitSystem.peek());
  open();
  addEventListener('hashchange', () => {
    if (location.hash.startsWith('#v=')) open();
  });
  keepAddress(state, address);
  places.controls.replaceChildren();
  effect(() => {
    const view = { state, lessons, address: address.value, otherNumbers, print: () => print() };
    render(h(Controls, view), places.controls);
  });
  effect(() => {
    if (!drawn.value) return;
    for (const each of places.built) each.remove();
    render(h(Paper, drawn.value), places.paper);
  });
  drawAsChosen(state, lessons, drawn, (words) => {
    places.status.textContent = words;
  });
  announceLive();
}
