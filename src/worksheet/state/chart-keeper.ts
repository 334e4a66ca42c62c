/** Puts the chart into its place and draws it anew after each edit; the plotting library comes with the first chart. */
import { effect } from '@preact/signals-core';
import type { WorksheetResults } from '../../core/worksheet.ts';
import { chartFinding } from '../words/chart-words.ts';
import type { Answers } from './answers.ts';
import { chartOf } from './chart-of.ts';
import type { Shown } from './shown.ts';
import type { SheetView } from './view.ts';

const LEAST_WIDTH = 280; // px
const MOST_WIDTH = 640;

function widthOf(slot: HTMLElement): number {
  return Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, slot.clientWidth));
}

/** Keeps the chart in step with the sheet, and with the width of its place. */
export function keepChart(sheet: SheetView, root: HTMLElement): void {
  let turn = 0;
  const redraw = async (found: WorksheetResults, answers: Answers, shown: Shown) => {
    turn += 1;
    const mine = turn;
    const slot = root.querySelector<HTMLElement>('.chart-slot');
    if (!slot) return;
    if (chartFinding(found, answers, shown) === undefined) return slot.replaceChildren();
    const loaded = await import('../../charts/stress-chart.ts').catch(() => undefined);
    if (mine !== turn) return; // the sheet has changed since
    // Without the library the table of the same numbers stands alone.
    const chart = chartOf(found, answers, shown, widthOf(slot));
    slot.replaceChildren(
      ...(loaded && chart ? [loaded.stressChart(chart, slot.ownerDocument)] : []),
    );
  };
  const now = () => {
    const results = sheet.results();
    if (results) void redraw(results, sheet.answers(), sheet.shown());
  };
  effect(now);
  let width = innerWidth;
  addEventListener('resize', () => {
    if (innerWidth !== width) now();
    width = innerWidth;
  });
}
