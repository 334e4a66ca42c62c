/** Intervals of stress over each other on one scale; the target as a line through all. */
import { part } from '../kit/part.tsx';
import { Steel } from '../kit/Result.tsx';
import { type Drawn, StressBar, scaleOf } from '../kit/StressBar.tsx';
import type { Route } from '../state/carried.ts';
import type { Shown } from '../state/shown.ts';

/** What each route to the stress is called beside its bar. */
export const routeWords = (route: Route, { load }: Shown): string =>
  ({
    predicted: `The ${load.by} predicts`,
    measured: 'You measured',
    both: 'Both together',
  })[route];

/** One of several bars: what says so, and what it says. */
export interface SaidSpan {
  readonly says: string;
  readonly span: Drawn;
  readonly isFaint?: boolean | undefined;
}

interface BarsProps {
  readonly bars: readonly SaidSpan[];
  readonly target?: number | undefined; // Pa
}

/** Bars over each other on one scale, each with its words and its range; the target as a line through all. */
export const StressBars = part<BarsProps>(({ bars, target }, sheet) => {
  const shown = sheet.shown();
  const most = scaleOf(bars, target);
  return (
    <div class="bars">
      {bars.map(({ says, span, isFaint }, at) => (
        <div class="bar-row" key={at}>
          <p>
            {says} <Steel>{shown.range(Math.max(0, span.low), span.high, 'stress')}</Steel>
          </p>
          <StressBar span={span} most={most} target={target} isFaint={isFaint} />
        </div>
      ))}
      {target !== undefined && (
        <p class="bar-target">Dashed: the target, {shown.quantity(target, 'stress')}</p>
      )}
    </div>
  );
});
