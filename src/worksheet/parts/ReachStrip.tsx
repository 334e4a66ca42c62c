/** The one bar that narrows, at the foot of the screen: always in reach, one tap from the answers. */
import { part } from '../kit/part.tsx';
import { Steel } from '../kit/Result.tsx';
import { StressBar, scaleOf } from '../kit/StressBar.tsx';
import { carriedBy, stressAnswered } from '../state/carried.ts';

/** The strip. */
export const ReachStrip = part((_, sheet) => {
  const routes = carriedBy(sheet);
  const answered = stressAnswered(sheet);
  const target = sheet.worksheet()?.target.stress;
  const most = scaleOf(routes, target);
  const { quantity, range, load } = sheet.shown();
  return (
    <nav class="reach no-print" aria-label="Answers and parts">
      {answered && (
        <StressBar
          span={answered}
          most={most}
          target={target}
          isFaint={routes.at(-1)?.route === 'predicted'}
        />
      )}
      <a href="#answers">
        {answered ? (
          <>
            At {quantity(answered.torque, load.name)}:{' '}
            <Steel>{range(answered.low, answered.high, 'stress')}</Steel>
          </>
        ) : (
          'Answers'
        )}
      </a>
      <a href="#parts">Parts</a>
    </nav>
  );
});
