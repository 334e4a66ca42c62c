/** The chart with its finding, its key, and the same numbers as a table. */
import { part } from '../kit/part.tsx';
import { chartFinding } from '../words/chart-words.ts';
import { Drawing } from './Drawing.tsx';
import { chartOf } from './of-results.ts';

const Numbers = part((_, sheet) => {
  const found = sheet.result('points');
  if (!found?.ready) return null;
  const [shown, { prediction }] = [sheet.shown(), sheet.answers()];
  const curve = prediction?.trials ? prediction.curve : [];
  const predictedAt = new Map(curve.map((point) => [point.torque, point]));
  return (
    <details class="seldom numbers">
      <summary>The numbers in the chart</summary>
      <table class="plain-table">
        <thead>
          <tr>
            <th scope="col">Torque</th>
            <th scope="col">Measured</th>
            <th scope="col">Predicted</th>
            <th scope="col">Straight?</th>
          </tr>
        </thead>
        <tbody>
          {found.points.map(({ row, torque, stress, inToe }) => {
            const predicted = predictedAt.get(torque);
            return (
              <tr key={row}>
                <th scope="row">{shown.quantity(torque, 'torque')}</th>
                <td class="steel">{shown.quantity(stress, 'stress')}</td>
                <td>{predicted ? shown.range(predicted.low, predicted.high, 'stress') : '–'}</td>
                <td>{inToe ? 'toe' : 'yes'}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </details>
  );
});

/** The chart, once there is something to draw. */
export const Chart = part((_, sheet) => {
  const [results, answers, shown] = [sheet.results(), sheet.answers(), sheet.shown()];
  const finding = results && chartFinding(results, answers, shown);
  if (!results || !finding) return <figure class="figure chart" hidden />;
  const curve = answers.prediction?.curve ?? [];
  return (
    <figure class="figure chart">
      <figcaption id="chart-finding">{finding}</figcaption>
      <div class="stress-chart">
        <Drawing chart={chartOf(results, curve)} system={shown.system} />
      </div>
      <p class="visually-hidden" id="chart-description">
        Stress over torque: prediction as an area, readings as dots with bars.
      </p>
      <p class="hint chart-key">
        Shaded: predicted, with its 95 % range; the thin line is its middle. Dots with bars:
        measured, and twice what wrench and dial scatter. Open dots: still in the toe. Upright bar
        at the drag: where the zero may lie. Red line: all readings together; dashed: the line
        through both errors. Blue: the setting.
      </p>
      <Numbers />
    </figure>
  );
});
