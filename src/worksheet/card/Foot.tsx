/** The cautions of the setting card in short, and its foot: rows to write checks into. */
import type { JSX } from 'preact';
import { part } from '../kit/part.tsx';
import { wrenchKind } from './tools.ts';

/** How a wrench tells the torque. */
const HOW_TO_READ = {
  clicks: 'Go slowly, and stop at the click.',
  shows: 'Read the torque as the handle moves.',
  unknown: 'Read the torque as the handle moves, or stop at the click.',
} as const;

/** Six sentences for the shed wall. */
export const CardCautions = part((_, sheet): JSX.Element => {
  const { load } = sheet.shown();
  return (
    <ul class="card-cautions">
      <li>
        Lock the mill out, take the key, wait until the wheels are still. Only then touch the band.
      </li>
      <li>Gloves and eye protection. Tighten slowly; stand out of the plane of the band.</li>
      <li>The makers’ limits come first. Let the tension off as the mill’s maker says.</li>
      <li>
        {load.name === 'torque'
          ? HOW_TO_READ[wrenchKind(sheet.text('wrench'))]
          : 'Read the pressure on the way up, while you pump.'}{' '}
        Past it? Slacken, come up again.
      </li>
      <li>
        Set and check it cold: {load.name === 'torque' ? 'no wrench on' : 'never pump up'} a warm
        band. Less when cold? Find out what slipped.
      </li>
      <li>
        Each {load.name} is for one band. Change the{' '}
        {load.name === 'torque' ? 'wrench or the grease' : 'cylinder or the gauge'}? Measure again.
      </li>
    </ul>
  );
});

/** Empty rows for a pen. */
export const CardLog = part<{ readonly rows: number }>(({ rows }, sheet): JSX.Element => {
  return (
    <table class="card-log">
      <thead>
        <tr>
          <th scope="col">Date</th>
          <th scope="col">{sheet.shown().load.title}</th>
          <th scope="col">Dial</th>
          <th scope="col">By whom</th>
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: rows }, (_, row) => (
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
});
