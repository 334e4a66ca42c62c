/** The chart with its finding, its key, and the same numbers as a table. */
import type { JSX } from 'preact';
import { type PredictedPoint, predictedCurve } from '../../core/worksheet.ts';
import { sheetView } from '../state/view.ts';
import { chartFinding } from '../words/chart-words.ts';
import { Drawing } from './Drawing.tsx';
import { chartOf, curveTorques } from './of-results.ts';

interface CurveProps {
  readonly curve: readonly PredictedPoint[];
}

function Numbers({ curve }: CurveProps): JSX.Element | null {
  const { results, shown } = sheetView();
  if (!results?.points.ready) return null;
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
          {results.points.points.map(({ row, torque, stress, inToe }) => {
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
}

function curvePoints(): readonly PredictedPoint[] {
  const { results, worksheet } = sheetView();
  const curve = results && worksheet && predictedCurve(worksheet, curveTorques(results));
  return curve?.ready ? curve.points : [];
}

/** The chart, once there is something to draw. */
export function Chart(): JSX.Element {
  const { results, shown } = sheetView();
  const finding = results && chartFinding(results, shown);
  if (!results || !finding) return <figure class="figure chart" hidden />;
  const curve = curvePoints();
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
        Shaded: predicted, twice its standard uncertainty to each side; the thin line is its middle.
        Dots with bars: measured, and twice what wrench and dial scatter. Open dots: still in the
        toe. Upright bar at the drag: where the zero may lie. Red line: all readings together;
        dashed: the line through both errors. Blue: the setting.
      </p>
      <Numbers curve={curve} />
    </figure>
  );
}
