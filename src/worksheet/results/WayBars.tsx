/** Every way of setting as equals on one scale, with the target as a line through all. */
import type { WayStress } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { Steel } from '../kit/Result.tsx';
import { StressBar, scaleOf, TargetLine } from '../kit/StressBars.tsx';
import type { Span } from '../state/carried.ts';

interface Bar {
  readonly says: string;
  readonly span: Span;
}

const spanOf = ({ stress, low, high }: WayStress): Span => ({
  stress,
  low: Math.max(0, low),
  high,
});

/** The bars, once there are two to compare. */
export const WayBars = part((_, sheet) => {
  const shown = sheet.shown();
  const ways = sheet.result('ways') ?? [];
  const bars = ways.flatMap(({ name, fromTorque, fromReadings }, place): Bar[] => {
    const own = name || `Way ${place + 1}`;
    return [
      ...(fromTorque.ready ? [{ says: `${own}, by its torque`, span: spanOf(fromTorque) }] : []),
      ...(fromReadings.ready ? [{ says: `${own}, by the dial`, span: spanOf(fromReadings) }] : []),
    ];
  });
  if (bars.length < 2) return null;
  const target = sheet.worksheet()?.target.stress;
  const most = scaleOf(bars, target);
  return (
    <div class="bars" data-bars="ways">
      {bars.map(({ says, span }) => (
        <div class="bar-row" key={says}>
          <p>
            {says}: <Steel>{shown.range(span.low, span.high, 'stress')}</Steel>
          </p>
          <StressBar span={span} most={most} target={target} />
        </div>
      ))}
      <TargetLine target={target} />
    </div>
  );
});
