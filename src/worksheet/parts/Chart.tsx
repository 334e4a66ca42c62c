/** The place of the chart, and the same numbers as a table. The chart itself is put in by `chart-keeper.ts`. */
import { part } from '../kit/part.tsx';
import { chartFinding } from '../words/chart-words.ts';

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

/** The chart with its finding. */
export const Chart = part((_, sheet) => {
  const results = sheet.results();
  const finding = results && chartFinding(results, sheet.answers(), sheet.shown());
  return (
    <figure class="chart" hidden={!finding}>
      <figcaption>{finding}</figcaption>
      <div class="chart-slot" />
      <p class="hint chart-key">
        Shaded: predicted, with its 95 % range. Dots with bars: measured, and how well the dial
        repeats. Open dots: still in the toe. Cross-line at the bottom: where the zero may lie.
        Dashed and dotted: the middle of the prediction. Blue line: the setting.
      </p>
      <Numbers />
    </figure>
  );
});
