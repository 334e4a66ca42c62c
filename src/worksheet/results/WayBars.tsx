/** Every way of setting as equals on one scale, with the target as a line through all. */
import { part } from '../kit/part.tsx';
import { StressBars } from './StressBars.tsx';

/** The bars, once there are two to compare. */
export const WayBars = part((_, sheet) => {
  const ways = sheet.result('ways') ?? [];
  const bars = ways.flatMap(({ name, fromTorque, fromReadings }, place) => {
    const own = name || `Way ${place + 1}`;
    return [
      ...(fromTorque.ready
        ? [{ says: `${own}, by its ${sheet.shown().load.name}:`, span: fromTorque }]
        : []),
      ...(fromReadings.ready ? [{ says: `${own}, by the dial:`, span: fromReadings }] : []),
    ];
  });
  if (bars.length < 2) return null;
  return (
    <div data-bars="ways">
      <StressBars bars={bars} target={sheet.worksheet()?.target.stress} />
    </div>
  );
});
