/** The chart with its finding, its key, and the same numbers as a table. */
import { part } from '../kit/part.tsx';
import { Drawing } from './Drawing.tsx';
import { Numbers } from './Numbers.tsx';
import { chartOf } from './of-results.ts';

/** The chart of what there is to draw. */
export const Chart = part(({ finding }: { readonly finding: string }, sheet) => {
  const [results, answers, shown] = [sheet.results(), sheet.answers(), sheet.shown()];
  if (!results) return null;
  const chart = chartOf(results, answers.prediction?.curve ?? []);
  return (
    <figure class="figure chart">
      <figcaption id="chart-finding">{finding}</figcaption>
      <div class="stress-chart">
        <Drawing chart={chart} system={shown.system} load={shown.kindOf(shown.load.name)} />
      </div>
      <p class="visually-hidden" id="chart-description">
        Stress over {shown.load.name}: prediction as an area, readings as dots with bars.
      </p>
      <p class="hint chart-key">
        Shaded: predicted, with its 95 % range; the thin line is its middle. Dots with bars:
        measured, and twice what {shown.load.scale} and dial scatter. Open dots: still in the toe.
        Upright bar at the {shown.load.noLoad}: where the zero may be. Red line: all readings
        together; dashed: the line through both errors. {chart.setting && 'Blue: the setting.'}
      </p>
      <Numbers />
    </figure>
  );
});
