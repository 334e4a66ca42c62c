/** The one bar that narrows, at the foot of the screen: always in reach, one tap from the answers. */
import { part } from '../kit/part.tsx';
import { Steel } from '../kit/Result.tsx';
import { StressBar, scaleOf } from '../kit/StressBars.tsx';
import { carriedBy, torqueAtHand } from '../state/carried.ts';

/** The strip. */
export const ReachStrip = part((_, sheet) => {
  const routes = carriedBy(sheet);
  const { span, route } = routes.at(-1) ?? {};
  const torque = torqueAtHand(sheet);
  const target = sheet.worksheet()?.target.stress;
  const most = scaleOf(routes, target);
  return (
    <nav class="reach no-print" aria-label="Answers and parts">
      {span && (
        <StressBar span={span} most={most} target={target} isFaint={route === 'predicted'} />
      )}
      <a href="#answers">
        {span ? (
          <>
            {torque !== undefined &&
              `At ${sheet.shown().quantity(torque, sheet.shown().load.name)}: `}
            <Steel>{sheet.shown().range(span.low, span.high, 'stress')}</Steel>
          </>
        ) : (
          'Answers'
        )}
      </a>
      <a href="#parts">Parts</a>
    </nav>
  );
});
