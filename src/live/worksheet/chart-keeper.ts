/** Puts the chart into its place and draws it anew after each edit; the plotting library comes with the first chart. */
import { effect } from '@preact/signals-core';
import type { StressChart } from '../../charts/stress-chart.ts';
import { predictedCurve, type WorksheetResults } from '../../core/worksheet.ts';
import type { Worksheet } from '../../core/worksheet-form.ts';
import { chartFinding } from './chart-words.ts';
import type { SheetStore } from './sheet-store.ts';
import { type Shown, shownIn } from './shown.ts';

const CURVE_STEPS = 24;
const LEAST_WIDTH = 280;
const MOST_WIDTH = 640;

function torquesUpTo(top: number): readonly number[] {
  return Array.from({ length: CURVE_STEPS + 1 }, (_, i) => (top * i) / CURVE_STEPS);
}

/** The zero and the straight line as stresses, once the stress is known. */
function lineAndZero({ measured, zero }: WorksheetResults) {
  if (!measured.ready || !zero.ready) return {};
  const perMetre = measured.stress / zero.stretch.stretch;
  const torque = measured.dragTorque;
  return {
    line: [
      { torque, stress: 0 },
      { torque: measured.topTorque, stress: measured.stress },
    ],
    zero: {
      torque,
      low: perMetre * (zero.low - zero.zero),
      high: perMetre * (zero.high - zero.zero),
    },
  };
}

/** What is to be drawn for a sheet; undefined while there is nothing. */
export function chartOf(
  worksheet: Worksheet,
  results: WorksheetResults,
  shown: Shown,
  width: number,
): StressChart | undefined {
  const title = chartFinding(results, shown);
  if (title === undefined) return undefined;
  const { points, predicted, setting } = results;
  const measured = points.ready ? points.points : [];
  const torques = [
    ...measured.map(({ torque }) => torque),
    ...(predicted.ready ? [predicted.operands.torque] : []),
    ...(setting.ready ? [setting.torque] : []),
  ];
  const curve = predictedCurve(worksheet, torquesUpTo(1.05 * Math.max(...torques)));
  return {
    title,
    description: 'Stress over torque: prediction as a band, readings as dots with bars.',
    system: shown.system,
    width,
    points: measured,
    curve: curve.ready ? curve.points : [],
    ...lineAndZero(results),
    ...(setting.ready && { setting: { torque: setting.torque, stress: setting.stress } }),
  };
}

function widthOf(slot: HTMLElement): number {
  return Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, slot.clientWidth));
}

/** Keeps the chart in step with the store, and with the width of its place. */
export function keepChart({ read, results, system }: SheetStore, root: HTMLElement): void {
  let turn = 0;
  const redraw = async (worksheet: Worksheet, found: WorksheetResults, shown: Shown) => {
    turn += 1;
    const mine = turn;
    const slot = root.querySelector<HTMLElement>('.chart-slot');
    if (!slot) return;
    if (chartFinding(found, shown) === undefined) return slot.replaceChildren();
    const loaded = await import('../../charts/stress-chart.ts').catch(() => undefined);
    if (mine !== turn) return; // the sheet has changed since
    const chart = chartOf(worksheet, found, shown, widthOf(slot));
    // Without the library the table of the same numbers stands alone.
    slot.replaceChildren(...(loaded && chart ? [loaded.stressChart(chart, slot.ownerDocument)] : []));
  };
  const now = () =>
    void redraw(read.value.worksheet, results.value, shownIn(system.value));
  effect(now);
  let width = innerWidth;
  addEventListener('resize', () => {
    if (innerWidth !== width) now();
    width = innerWidth;
  });
}
