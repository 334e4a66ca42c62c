/** The chart's place: the drawing is fetched with the first sheet that has something to draw. */
import { late } from '../kit/late.tsx';
import { part } from '../kit/part.tsx';
import { chartFinding } from '../words/chart-words.ts';

const place = <figure class="figure chart" hidden />;
const Drawing = late(() => import('./Chart.tsx'), 'Chart', place);

/** The chart, once there is something to draw. */
export const LateChart = part((_, sheet) => {
  const finding = chartFinding(sheet);
  return finding ? <Drawing finding={finding} /> : place;
});
