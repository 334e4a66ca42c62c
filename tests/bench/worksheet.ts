import { evaluateWorksheet } from '../../src/core/worksheet.ts';
import { millC } from '../core/worksheet/fixtures/mills.ts';

const runs = 30;

/** How long a worksheet of twelve readings takes, as the best and the median of some runs. */
export function worksheetEvaluation(): string[] {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    evaluateWorksheet(millC);
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const [best, median] = [times[0], times[runs / 2]].map((time) => (time as number).toFixed(1));
  return [`worksheet, ${millC.readings.length} readings: ${median} ms (best ${best} ms)`];
}
