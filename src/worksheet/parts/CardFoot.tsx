/** The foot of the setting card: rows to write checks into, and the cautions in short. */
import type { JSX } from 'preact';

/** Five sentences for the shed wall. */
export function CardCautions(): JSX.Element {
  return (
    <ul class="card-cautions">
      <li>Locked out, key away, wheels still, before a hand comes near the band.</li>
      <li>Gloves and eye protection. Turn slowly; stand out of the plane of the band.</li>
      <li>
        The mill’s and the band’s makers come first. Let the tension off as the mill’s maker says.
      </li>
      <li>
        A torque holds only while tightening, read as the handle moves. Past it? Slacken and come up
        again.
      </li>
      <li>
        Each torque is good for its band, this mill, this wrench, this grease. Measure again when
        one changes.
      </li>
    </ul>
  );
}

const CHECKS = ['', '', '', ''];

/** A line for what the setting holds with. */
export function CardMeans(): JSX.Element {
  return <p class="card-means">Grease and wrench:</p>;
}

/** Empty rows for a pen. */
export function CardChecks(): JSX.Element {
  return (
    <table class="card-checks">
      <thead>
        <tr>
          <th scope="col">Date</th>
          <th scope="col">Torque</th>
          <th scope="col">Dial</th>
          <th scope="col">By, and what was seen</th>
        </tr>
      </thead>
      <tbody>
        {CHECKS.map((_, row) => (
          <tr key={row}>
            <td />
            <td />
            <td />
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}
