/** The place of the chart, and the same numbers as a table. The chart itself is put in by `chart-keeper.ts`. */
import type { JSX } from 'preact';
import { predictedCurve } from '../../core/worksheet.ts';
import { sheetView } from '../state/view.ts';
import { chartFinding } from '../words/chart-words.ts';

function Numbers(): JSX.Element | null {
  const { results, shown, worksheet } = sheetView();
  if (!results?.points.ready || !worksheet) return null;
  const { points } = results.points;
  const curve = predictedCurve(
    worksheet,
    points.map(({ torque }) => torque),
  );
  const predictedAt = (torque: number) =>
    curve.ready ? curve.points.find((point) => point.torque === torque) : undefined;
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
          {points.map(({ row, torque, stress, inToe }) => {
            const predicted = predictedAt(torque);
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
}

/** The chart with its finding. */
export function Chart(): JSX.Element {
  const { results, shown } = sheetView();
  const finding = results && chartFinding(results, shown);
  return (
    <figure class="chart" hidden={!finding}>
      <figcaption>{finding}</figcaption>
      <div class="chart-slot" />
      <p class="hint chart-key">
        Shaded: predicted, twice its standard uncertainty to each side. Dots with bars: measured,
        and how well the dial repeats. Open dots: still in the toe. Cross-line at the bottom: where
        the zero may lie. Dashed and dotted: the middle of the prediction. Blue line: the setting.
      </p>
      <Numbers />
    </figure>
  );
}
