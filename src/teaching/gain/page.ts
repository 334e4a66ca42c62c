/** The table of scores comes alive; what is typed stays on the page and goes nowhere. */
import { effect, signal } from '@preact/signals-core';
import { h, render } from 'preact';
import { announceLive } from '../../live/announce.ts';
import { learnersIn } from '../kit/class-size.ts';
import { type Row, startingRows } from './scores.ts';
import { Table } from './Table.tsx';

/** Starts the table; a page without its place stays the page that was built. */
export function startGain(page: Document): void {
  const place = page.querySelector<HTMLElement>('[data-gain]');
  if (!place) return;
  const questions = Number(place.dataset['gain']);
  const rows = signal<readonly Row[]>(startingRows(learnersIn(location.hash)));
  const set = (next: readonly Row[]) => {
    rows.value = next;
  };
  place.replaceChildren();
  effect(() => render(h(Table, { rows: rows.value, questions, set }), place));
  announceLive();
}
