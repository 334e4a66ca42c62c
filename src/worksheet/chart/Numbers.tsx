/** The numbers of the chart as a table, written once it is unfolded. */
import { Component, type JSX } from 'preact';
import { part } from '../kit/part.tsx';

const Table = part((_, sheet) => {
  const found = sheet.result('points');
  if (!found?.ready) return null;
  const [shown, { prediction }] = [sheet.shown(), sheet.answers()];
  const curve = prediction?.trials ? prediction.curve : []; // none while the newest is on its way
  const predictedAt = new Map(curve.map((point) => [point.torque, point]));
  return (
    <table class="plain-table">
      <thead>
        <tr>
          <th scope="col">{shown.load.title}</th>
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
              <th scope="row">{shown.quantity(torque, shown.load.name)}</th>
              <td class="steel">{shown.quantity(stress, 'stress')}</td>
              <td>{predicted ? shown.range(predicted.low, predicted.high, 'stress') : '–'}</td>
              <td>{inToe ? 'toe' : 'yes'}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
});

/** The table, folded away. */
export class Numbers extends Component<object, { readonly isOpen: boolean }> {
  override state = { isOpen: false };

  render(): JSX.Element {
    const { isOpen } = this.state;
    return (
      <details
        class="seldom numbers"
        open={isOpen}
        onToggle={({ currentTarget }) => this.setState({ isOpen: currentTarget.open })}
      >
        <summary>The numbers in the chart</summary>
        {isOpen && <Table />}
      </details>
    );
  }
}
