/** The foot of the setting card: rows to write checks into, and the cautions in short. */
import type { JSX } from 'preact';

/** Five sentences for the shed wall. */
export function CardCautions(): JSX.Element {
  return (
    <ul class="card-cautions">
      <li>
        Lock the mill out, take the key, wait until the wheels are still. Only then touch the band.
      </li>
      <li>Gloves and eye protection. Turn slowly; stand out of the plane of the band.</li>
      <li>The makers’ limits come first. Let the tension off as the mill’s maker says.</li>
      <li>
        Read the torque while you tighten and the handle moves. Past it? Slacken and come up again.
      </li>
      <li>
        Each torque is for one band, on this mill, with this wrench and this grease. Measure again
        when one changes.
      </li>
    </ul>
  );
}

const CHECKS = ['', '', '', ''];

/** Empty rows for a pen. */
export function CardChecks(): JSX.Element {
  return (
    <table class="card-checks">
      <thead>
        <tr>
          <th scope="col">Date</th>
          <th scope="col">Torque</th>
          <th scope="col">Dial</th>
          <th scope="col">By whom</th>
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
