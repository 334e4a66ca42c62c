/** The chart's place: the drawing is fetched with the first sheet that has something to draw. */
import { signal } from '@preact/signals-core';
import { part } from '../kit/part.tsx';
import { chartFinding } from '../words/chart-words.ts';
import { NOTICES } from '../words/notices.ts';
import type { Chart } from './Chart.tsx';

const drawing = signal<{ readonly Chart: typeof Chart } | 'asked' | 'failed' | undefined>(
  undefined,
);

function fetchDrawing(): void {
  drawing.value = 'asked';
  import('./Chart.tsx').then(
    ({ Chart }) => {
      drawing.value = { Chart };
    },
    () => {
      drawing.value = 'failed';
    },
  );
}

/** The chart, once there is something to draw. */
export const LateChart = part((_, sheet) => {
  const results = sheet.results();
  const finding = results && chartFinding(results, sheet.answers(), sheet.shown());
  const found = drawing.value;
  if (!finding) return <figure class="figure chart" hidden />;
  if (found === 'failed') return <p class="refusal">{NOTICES.notArrived}</p>;
  if (typeof found === 'object') return <found.Chart finding={finding} />;
  if (found === undefined) queueMicrotask(fetchDrawing);
  return <figure class="figure chart" hidden />;
});
